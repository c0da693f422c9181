using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>A page of a finished PDF as a reader finds it.</summary>
/// <param name="Ink">Its texts and lines, in the terms the paper rules speak.</param>
/// <param name="Colours">What on it is not opaque black, or not said in DeviceGray; each in words.</param>
/// <param name="NotEmbedded">Names of fonts the file does not carry.</param>
internal sealed record ReadPage(PageInk Ink, ImmutableArray<Glyph> Glyphs, ImmutableArray<string> Colours, ImmutableArray<string> NotEmbedded);

using PaperFlock.Words;

const string TemplateFile = "words/paperflock.pot";

if (args is not (["template"] or ["pseudo", _]))
{
    Console.Error.WriteLine("""
        Run it in the folder of the repository:
          template       writes words/paperflock.pot from the words in the sources
          pseudo FILE    writes a catalogue of accented and longer words, to try sheets with
        """);
    return 2;
}

var words = SourceWords.In(Directory.GetCurrentDirectory());
foreach (var problem in words.Problems)
{
    Console.Error.WriteLine(problem);
}

if (!words.Problems.IsEmpty)
{
    return 1;
}

var (file, text) = args is [_, var name]
    ? (name, Pseudo.CatalogueOf(words.Said))
    : (TemplateFile, PoText.Template(words.Said));
if (Path.GetDirectoryName(file) is { Length: > 0 } folder)
{
    Directory.CreateDirectory(folder);
}

File.WriteAllText(file, text);
Console.WriteLine($"{file}: {words.Said.Length} texts");
return 0;

using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests.Schema;

/// <summary>
/// The schema and the reader, held against each other by a validator of other hands. They agree when every file the reader takes
/// is valid, so that an editor never finds fault with a right file; and when every fault of a kind a schema can see is one it sees.
/// </summary>
public class FlockSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(FlockSchema.Json());

    /// <summary>Faults of one value, one key or one list, which a schema can see.</summary>
    private static readonly string[] Visible =
    [
        "FLK020", "FLK022", "FLK023", "FLK024", "FLK025", "FLK026",
        "FLK030", "FLK031", "FLK032", "FLK033", "FLK034", "FLK035",
        "FLK036", "FLK037", "FLK038", "FLK039", "FLK043", "FLK050",
        "FLK065", "FLK016",
    ];

    /// <summary>Bad flocks whose only faults are of those kinds, and yet out of its sight.</summary>
    private static readonly Dictionary<string, string> Unseen = new(StringComparer.Ordinal)
    {
        ["missing-mating-day"] = "required only beside another key",
        ["taken-for-remark"] = "a tag left blank is the same null",
        ["missing-value"] = "a name left blank is a null to an editor, and so is a ewe called Null",
    };

    public static TheoryData<string> Bad => [.. Samples.Bad];

    public static TheoryData<string> Good => [.. Samples.Good];

    [Fact]
    public void The_copy_that_editors_are_pointed_to_is_the_one_made_from_the_tables() =>
        Assert.Equal(FlockSchema.Json(), File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "flocks", "flock.schema.json")));

    [Fact]
    public void The_schema_is_a_schema() =>
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(FlockSchema.Json()).RootElement).IsValid);

    [Theory]
    [MemberData(nameof(Good))]
    public void The_samples_are_valid_and_point_to_the_schema(string name)
    {
        var bytes = Samples.Bytes(name);
        Assert.True(EditorsView.TryRead(bytes, out var json));
        Assert.True(IsValid(json), Why(json));
        Assert.StartsWith($"# yaml-language-server: $schema=flock.schema.json\n", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_bad_flock_is_invalid_where_a_schema_can_see_its_fault(string name)
    {
        var reading = Samples.Read($"bad/{name}");
        var errors = reading.Diagnostics.Where(d => d.Severity == Severity.Error).ToArray();
        if (!EditorsView.TryRead(Samples.Bytes($"bad/{name}"), out var json))
        {
            Assert.NotEmpty(errors);
            return;
        }

        var valid = IsValid(json);
        if (errors.Length == 0)
        {
            Assert.True(valid, Why(json));
        }

        if (errors.Any(e => Visible.Contains(e.Code)))
        {
            Assert.Equal(Unseen.ContainsKey(name), valid);
        }
    }

    /// <summary>Every key, described and with its unit where it has one.</summary>
    [Fact]
    public void Every_key_has_a_description()
    {
        var keys = 0;
        Walk(JsonNode.Parse(FlockSchema.Json())!.AsObject());
        Assert.Equal(FlockKeys.All.Sum(t => t.Keys.Length), keys);

        void Walk(JsonObject schema)
        {
            foreach (var (name, below) in schema["properties"]?.AsObject() ?? [])
            {
                keys++;
                var description = (string?)below!["description"];
                Assert.True(description is { Length: > 10 } && description.EndsWith('.'), name);
                Walk(below.AsObject());
                foreach (var either in (below["anyOf"]?.AsArray() ?? []).OfType<JsonObject>())
                {
                    Walk(either);
                }

                if (below["items"] is JsonObject items)
                {
                    Walk(items);
                }
            }
        }
    }

    /// <summary>Some files with a few values, keys and shapes put out of order, at random.</summary>
    [Fact]
    public void What_the_reader_takes_is_valid_and_what_is_invalid_the_reader_refuses()
    {
        var taken = 0;
        var refused = 0;
        Gen.Select(Samples.OneOf(RandomFlocks.Bases), RandomFlocks.Slip.Array[1, 2]).Sample(
            (text, slips) =>
            {
                var changed = RandomFlocks.Change(text, slips);
                var reading = FlockReader.Read("flock.yaml", changed);
                if (!EditorsView.TryRead(changed, out var json))
                {
                    return;
                }

                var valid = IsValid(json);
                Interlocked.Increment(ref reading.Flock is null ? ref refused : ref taken);
                if (reading.Flock is not null)
                {
                    Assert.True(valid, $"{Encoding.UTF8.GetString(changed)}\n{Why(json)}");
                }
            },
            iter: 4000,
            threads: 2);
        // Both sides must have been tried, or nothing was.
        Assert.InRange(taken, 400, 3600);
        Assert.InRange(refused, 400, 3600);
    }

    /// <summary>One fault of a kind that a schema can see, anywhere in a file that is right otherwise.</summary>
    [Fact]
    public void A_fault_a_schema_can_see_is_seen() =>
        Gen.Select(Samples.OneOf(RandomFlocks.Bases), Gen.Double[0, 1], Samples.OneOf(RandomFlocks.VisibleFaults)).Sample(
            (text, at, fault) =>
            {
                var changed = RandomFlocks.Spoil(text, at, fault);
                Assert.True(EditorsView.TryRead(changed, out var json));
                Assert.Null(FlockReader.Read("flock.yaml", changed).Flock);
                Assert.False(IsValid(json), $"{fault}:\n{Encoding.UTF8.GetString(changed)}");
            },
            iter: 1500,
            threads: 2);

    private static bool IsValid(JsonNode? json) => Schema.Evaluate(Element(json)).IsValid;

    private static string Why(JsonNode? json)
    {
        var results = Schema.Evaluate(Element(json), new EvaluationOptions { OutputFormat = OutputFormat.List });
        return string.Join('\n', (results.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Key} {e.Value}")));
    }

    private static JsonElement Element(JsonNode? json) => JsonSerializer.SerializeToElement(json);
}

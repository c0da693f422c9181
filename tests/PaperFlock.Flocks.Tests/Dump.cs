using System.Collections;
using System.Reflection;
using System.Text;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Tests;

/// <summary>A flock as lines of <c>path = value</c>, places in the file left out, so that two can be compared and a difference seen.</summary>
internal static class Dump
{
    public static string Of(Flock flock)
    {
        var text = new StringBuilder();
        Write(text, "flock", flock);
        return text.ToString();
    }

    private static void Write(StringBuilder text, string path, object? value)
    {
        switch (value)
        {
            case SourceSpan:
                return;
            case IEnumerable items when value is not string:
                var i = 0;
                foreach (var item in items)
                {
                    Write(text, $"{path}[{i++}]", item);
                }

                text.Append(path).Append(".count = ").Append(i).Append('\n');
                return;
            case not null when value.GetType().Namespace == typeof(Flock).Namespace && !value.GetType().IsEnum:
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    Write(text, $"{path}.{property.Name}", property.GetValue(value));
                }

                return;
            case decimal number:
                // 2.50 and 2.5 are one number.
                text.Append(path).Append(" = ").Append(number.ToString("0.############################", null)).Append('\n');
                return;
            default:
                text.Append(path).Append(" = ").Append(value ?? "nothing").Append('\n');
                return;
        }
    }
}

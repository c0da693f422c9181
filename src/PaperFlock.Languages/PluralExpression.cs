using System.Globalization;

namespace PaperFlock.Languages;

/// <summary>Reads the expression of a <see cref="PluralRule"/>, from what binds least to what binds most, as C has it.</summary>
internal sealed class PluralExpression
{
    /// <summary>Operators of two sides, those that bind least first. Longer ones stand before those they begin with.</summary>
    private static readonly string[][] Levels = [["||"], ["&&"], ["==", "!="], ["<=", ">=", "<", ">"], ["+", "-"], ["*", "/", "%"]];

    private const int Deepest = 50;

    private readonly string _words;
    private int _at;
    private int _depth;

    private PluralExpression(string words) => _words = words;

    /// <returns>Null when it is no such expression.</returns>
    public static Func<long, long>? Read(string words)
    {
        var reader = new PluralExpression(words);
        try
        {
            var value = reader.Choice();
            reader.Skip();
            return reader._at == words.Length ? value : null;
        }
        catch (FormatException)
        {
            return null;
        }
    }

    private Func<long, long> Choice()
    {
        if (++_depth > Deepest)
        {
            throw new FormatException("nested too deep");
        }

        var condition = Binary(0);
        if (Take("?"))
        {
            var yes = Choice();
            Expect(":");
            var no = Choice();
            _depth--;
            return n => condition(n) != 0 ? yes(n) : no(n);
        }

        _depth--;
        return condition;
    }

    private Func<long, long> Binary(int level)
    {
        if (level == Levels.Length)
        {
            return Unary();
        }

        var left = Binary(level + 1);
        while (Levels[level].FirstOrDefault(Take) is { } sign)
        {
            left = Joined(sign, left, Binary(level + 1));
        }

        return left;
    }

    private static Func<long, long> Joined(string sign, Func<long, long> left, Func<long, long> right) => sign switch
    {
        "||" => n => Of(left(n) != 0 || right(n) != 0),
        "&&" => n => Of(left(n) != 0 && right(n) != 0),
        "==" => n => Of(left(n) == right(n)),
        "!=" => n => Of(left(n) != right(n)),
        "<=" => n => Of(left(n) <= right(n)),
        ">=" => n => Of(left(n) >= right(n)),
        "<" => n => Of(left(n) < right(n)),
        ">" => n => Of(left(n) > right(n)),
        "+" => n => left(n) + right(n),
        "-" => n => left(n) - right(n),
        "*" => n => left(n) * right(n),
        "/" => n => left(n) / right(n),
        _ => n => left(n) % right(n),
    };

    private static long Of(bool truth) => truth ? 1 : 0;

    private Func<long, long> Unary()
    {
        if (Take("!"))
        {
            var inner = Unary();
            return n => Of(inner(n) == 0);
        }

        if (Take("("))
        {
            var inner = Choice();
            Expect(")");
            return inner;
        }

        if (Take("n"))
        {
            return n => n;
        }

        Skip();
        var start = _at;
        while (_at < _words.Length && char.IsAsciiDigit(_words[_at]))
        {
            _at++;
        }

        var number = (long)int.Parse(_words.AsSpan(start, Math.Min(_at - start, 9)), NumberStyles.None, CultureInfo.InvariantCulture);
        return _ => number;
    }

    private bool Take(string sign)
    {
        Skip();
        if (!_words.AsSpan(_at).StartsWith(sign, StringComparison.Ordinal))
        {
            return false;
        }

        _at += sign.Length;
        return true;
    }

    private void Expect(string sign)
    {
        if (!Take(sign))
        {
            throw new FormatException($"{sign} is missing");
        }
    }

    private void Skip()
    {
        while (_at < _words.Length && char.IsWhiteSpace(_words[_at]))
        {
            _at++;
        }
    }
}

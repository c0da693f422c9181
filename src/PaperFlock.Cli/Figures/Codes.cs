using PaperFlock.Planning;

namespace PaperFlock.Cli.Figures;

/// <summary>Words other programs compare with; never changed.</summary>
internal static class Codes
{
    public static string Of(Evidence evidence) => evidence switch
    {
        Evidence.Lambed => "lambed",
        Evidence.MatingDay => "mating",
        Evidence.Mark => "mark",
        Evidence.ScanStage => "scan",
        Evidence.TupStay => "tup-stay",
        _ => throw new ArgumentOutOfRangeException(nameof(evidence)),
    };

    public static string Of(Standing standing) => standing switch
    {
        Standing.ToLamb => "to-lamb",
        Standing.Empty => "empty",
        Standing.LeftOut => "left-out",
        Standing.Lambed => "lambed",
        _ => throw new ArgumentOutOfRangeException(nameof(standing)),
    };

    public static string Of(TupVerdict verdict) => verdict switch
    {
        TupVerdict.ToTheTup => "to-the-tup",
        TupVerdict.TreatFirst => "treat-first",
        TupVerdict.LeaveOut => "leave-out",
        TupVerdict.Cull => "cull",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    public static string Of(PlaceKind kind) => kind switch
    {
        PlaceKind.Field => "field",
        PlaceKind.Pen => "pen",
        PlaceKind.LambingPen => "lambing-pen",
        PlaceKind.WithLambs => "with-lambs",
        PlaceKind.Gone => "gone",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    public static string Of(EweState state) => state switch
    {
        EweState.WithTup => "with-tup",
        EweState.InLamb => "in-lamb",
        EweState.Lambed => "lambed",
        EweState.NotInLamb => "not-in-lamb",
        EweState.LeftOut => "left-out",
        EweState.Gone => "gone",
        _ => throw new ArgumentOutOfRangeException(nameof(state)),
    };
}

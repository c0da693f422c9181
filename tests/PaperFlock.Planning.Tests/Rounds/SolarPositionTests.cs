using CsCheck;
using NodaTime;
using PaperFlock.Planning.Rounds;

namespace PaperFlock.Planning.Tests.Rounds;

/// <summary>The sun's place itself, finer than any minute of rise and set shows it.</summary>
public sealed class SolarPositionTests
{
    /// <summary>Meeus, Astronomical Algorithms, examples 25.a and 28.b (from memory): 13 October 1992, 0 h: declination -7.78507 degrees, equation of time 13 min 42.7 s.</summary>
    [Fact]
    public void The_worked_examples_of_the_book_come_out()
    {
        var sun = SolarPosition.At(Instant.FromUtc(1992, 10, 13, 0, 0));
        Assert.Equal(-7.78507, SolarPosition.Degrees(sun.Declination), 0.00001);
        Assert.Equal(13 + (42.7 / 60), sun.EquationOfTime, 0.1 / 60);
    }

    /// <summary>What is found is no more than a twentieth of a second nearer noon than the crossing: at that moment the sun is past the height, and a twentieth of a second before it is not.</summary>
    [Fact]
    public void A_crossing_is_found_to_a_twentieth_of_a_second() =>
        Gen.Select(Gen.Double[-70, 70], Gen.Double[-180, 180], Gen.Int[0, 3650], Gen.Double[-12, 20]).Sample((latitude, longitude, day, altitude) =>
        {
            var sky = new Sky(latitude, longitude);
            var noon = sky.Noon(Instant.FromUtc(2020, 1, 1, 12, 0) + Duration.FromDays(day));
            var step = Duration.FromMilliseconds(50);
            if (sky.Rising(noon, altitude) is { } rising)
            {
                Assert.True(sky.Altitude(rising) >= altitude && sky.Altitude(rising - step) <= altitude);
            }

            if (sky.Setting(noon, altitude) is { } setting)
            {
                Assert.True(sky.Altitude(setting) >= altitude && sky.Altitude(setting + step) <= altitude);
            }
        });
}

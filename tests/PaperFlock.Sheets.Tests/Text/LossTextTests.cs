using PaperFlock.Flocks;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class LossTextTests
{
    [Fact]
    public void Every_reason_has_its_word() => Assert.Equal(["died", "sold", "culled", "missing"], Enum.GetValues<LossReason>().Select(LossText.Why));
}

using NodaTime;
using PaperFlock.Printing;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.Issues;

public sealed class IssueRecordTextTests
{
    [Fact]
    public void A_record_comes_back_as_it_was_written()
    {
        var record = PackComposer.Compose(Composed.HollinBank.Plan, FontLibrary.Measurer, PackRequest.Everything, null).Record!;
        var text = IssueRecordText.Write(record);
        foreach (var leaf in record.Leaves)
        {
            var one = record with { Leaves = [leaf] };
            Assert.True(IssueRecordText.Read(IssueRecordText.Write(one)) is not null, IssueRecordText.Write(one));
        }

        Assert.Equal(text, IssueRecordText.Write(IssueRecordText.Read(text)!));
    }
}

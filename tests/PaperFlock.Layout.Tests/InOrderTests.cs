namespace PaperFlock.Layout.Tests;

public sealed class InOrderTests
{
    [Fact]
    public void What_is_made_stands_in_the_order_of_the_items()
    {
        var items = Enumerable.Range(0, 1000).ToArray();
        Assert.Equal(items.Select(i => $"{i}"), InOrder.Select(items, i =>
        {
            // The first are done last.
            Thread.SpinWait(2 * (items.Length - i));
            return $"{i}";
        }));
    }

    [Fact]
    public void The_fault_of_the_first_item_that_has_one_is_thrown_and_nothing_round_it()
    {
        for (var i = 0; i < 50; i++)
        {
            var fault = Assert.Throws<FormatException>(() => InOrder.Select<int, int>([.. Enumerable.Range(0, 200)], n => n % 7 == 6 ? throw new FormatException($"{n}") : n));
            Assert.Equal("6", fault.Message);
        }
    }

    [Fact]
    public void What_works_make_stands_in_the_order_of_the_works() => Assert.Equal([0, 10, 20, 30], InOrder.All<int>([.. Enumerable.Range(0, 4).Select(n => (Func<int>)(() => 10 * n))]));

    [Fact]
    public void Of_no_items_nothing_is_made() => Assert.Empty(InOrder.Select<int, int>([], n => n));
}

using Dryfit.Outputs.Findings;

namespace Dryfit.Outputs.Tests.Findings;

public class A_diff
{
    [Fact]
    public void Shows_two_lines_around_what_changes()
    {
        Assert.Equal(
            "--- a.yaml\n+++ a.yaml\n@@ -2,5 +2,5 @@\n b\n c\n-d\n+D\n e\n f\n",
            UnifiedDiff.Write("a.yaml", "a\nb\nc\nd\ne\nf\ng\n", "a\nb\nc\nD\ne\nf\ng\n")
        );
    }

    [Fact]
    public void Keeps_what_changes_far_apart_in_pieces_of_its_own()
    {
        Assert.Equal(
            "--- a\n+++ a\n@@ -1,3 +1,3 @@\n-1\n+x\n 2\n 3\n@@ -6,3 +6,3 @@\n 6\n 7\n-8\n+y\n",
            UnifiedDiff.Write("a", "1\n2\n3\n4\n5\n6\n7\n8\n", "x\n2\n3\n4\n5\n6\n7\ny\n")
        );
    }

    [Fact]
    public void Shows_lines_that_change_together_first_as_they_were()
    {
        Assert.Equal(
            "--- a\n+++ a\n@@ -1,3 +1,3 @@\n-1\n-2\n+x\n+y\n 3\n",
            UnifiedDiff.Write("a", "1\r\n2\r\n3", "x\r\ny\r\n3")
        );
    }

    [Fact]
    public void Of_nothing_is_nothing()
    {
        Assert.Equal("", UnifiedDiff.Write("a", "1\n", "1\n"));
    }
}

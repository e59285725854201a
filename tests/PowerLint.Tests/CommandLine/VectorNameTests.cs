using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>A handler of a vector that the part does not have: the notice names the vector that may be meant.</summary>
public sealed class VectorNameTests
{
    [Theory]
    [InlineData("TIMER2_OVR_vect", " The nearest name is TIMER2_OVF_vect.")]
    [InlineData("ADC_vec", " The nearest name is ADC_vect.")]
    [InlineData("completely_elsewhere", "")]
    public void The_nearest_vector_is_named(string spelled, string hint)
    {
        using var folder = new TemporaryFolder();
        folder.Write(
            "main.c",
            $$"""
            void {{spelled}}(void) __attribute__((signal, used));
            void {{spelled}}(void) { }

            int main(void)
            {
                for (;;) {
                }
            }
            """
        );

        var report = TestConsole.Run(folder.Path, "check", "--device", "atmega328p", "main.c").Output;

        Assert.Contains(
            $"{spelled} is no interrupt of atmega328p; its handler is not run.{hint}\n",
            report,
            StringComparison.Ordinal
        );
    }
}

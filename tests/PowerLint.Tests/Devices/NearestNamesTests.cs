using PowerLint.Devices;

namespace PowerLint.Tests.Devices;

/// <summary>What a part that is not known may have been meant to be.</summary>
public sealed class NearestNamesTests
{
    private static readonly string[] Names = ["atmega328", "atmega328p", "nrf52832_xxaa", "stm32l051xx", "stm32l052xx"];

    [Theory]
    [InlineData("nrf52832", "nrf52832_xxaa")]
    [InlineData("STM32L05", "stm32l051xx stm32l052xx")]
    [InlineData("atmega328q", "atmega328 atmega328p")]
    [InlineData("stm", "")]
    public void Names_are_near_by_their_letters_or_by_their_beginning(string word, string expected) =>
        Assert.Equal(expected, string.Join(' ', NearestNames.Of(word, Names, 5)));
}

// Registers that show one row of a table at a time, pins' words that mirror a common register, writes that reach many words, and
// bits that ones set.
#include "part.h"

#define WORD(address) (*(volatile uint32_t *)(address))
#define PIN_CTRL(n) WORD(0x40031000UL + 4 * (n))
#define PIN_DIR WORD(0x40031100UL)
#define PIN_DIRSET WORD(0x40031104UL)
#define PIN_WRITE WORD(0x40031108UL)
#define CLOCK_CTRL WORD(0x40032000UL)
#define INTENSET WORD(0x40033304UL)
#define INTENCLR WORD(0x40033308UL)

extern volatile uint32_t anything;

static uint32_t source_of(uint8_t row)
{
    *(volatile uint8_t *)&CLOCK_CTRL = row;
    return CLOCK_CTRL >> 8 & 0x1F;
}

int main(void)
{
    // Something that ends the sleeps.
    SCB_SCR = SCR_SLEEPDEEP;
    PIN_CTRL(0) = 1u << 8;

    // A whole word goes to the row that it names; a byte with the row's number alone only chooses.
    CLOCK_CTRL = 1u | 3u << 8 | 1u << 16;
    CLOCK_CTRL = 2u | 4u << 8;
    PIN_DIR = source_of(0) << 1; // 12: pins 2 and 3
    PIN_DIRSET = source_of(1) >> 1; // 1: pin 0
    wait_for_interrupt(); // state: CLOCK.CTRL[0] = 0x10600, CLOCK.CTRL[1] = 0x10300, CLOCK.CTRL[2] = 0x400, CLOCK.CTRL = 0x10301, PIN.CTRL[0] = 0x101, PIN.CTRL[1] = 0, PIN.CTRL[2] = 1, PIN.DIR = 0xD

    // The half behind the chosen row's number.
    ((volatile uint16_t *)&CLOCK_CTRL)[1] = 0;
    CLOCK_CTRL = (anything & 1) | 6u << 8 | 1u << 16;
    PIN_CTRL(1) = 3u << 2 | 1u;
    PIN_CTRL(3) &= ~1u;
    PIN_WRITE = 0x5u | 2u << 18;
    PIN_WRITE = 0x9u | 1u << 18 | 1u << 31;
    INTENSET = 5;
    INTENSET |= 2;
    INTENCLR = 1;
    wait_for_interrupt(); // state: CLOCK.CTRL[0] = 0x10600, CLOCK.CTRL[1] = 0b?00000?1?00000000, CLOCK.CTRL[2] = 0x400, PIN.DIR = 7, PIN.CTRL[0] = 0x105, PIN.CTRL[1] = 0xD, PIN.CTRL[2] = 1, PIN.CTRL[3] = 4, EVENT.INTENSET = 6

    for (;;)
        wait_for_interrupt();
}

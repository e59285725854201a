// Bits that are what the row of a table holds that a field chooses, and a bit that puts registers back to their reset values.
#include "part.h"

#define WORD(address) (*(volatile uint32_t *)(address))
#define CLOCK_CTRL WORD(0x40032000UL)
#define SELECT WORD(0x40032100UL)
#define SELECT_MORE (*(volatile uint16_t *)0x40032104UL)
#define SELECT_B(row) ((row) << 4)
#define SELECT_AON (1u << 8)
#define SELECT_RESET (1u << 31)

extern volatile uint32_t anything;

int main(void)
{
    SCB_SCR = SCR_SLEEPDEEP;
    *(volatile uint32_t *)0x40031000UL = 1u << 8;

    // Row 0 is from reset on source 6; nothing chosen counts for A.
    wait_for_interrupt(); // state: FEED = 0x1F3F

    CLOCK_CTRL = 1u | 3u << 8;
    SELECT = 1u | SELECT_AON;
    wait_for_interrupt(); // state: FEED = 0x303

    // A row that changes afterwards is seen, by way of A in B too.
    CLOCK_CTRL = 1u | 5u << 8 | 1u << 16;
    wait_for_interrupt(); // state: FEED = 0x525

    // Two rows may be meant: what both hold is known. An index without a row tells nothing.
    SELECT = (anything & 1) | SELECT_B(1) | SELECT_AON;
    wait_for_interrupt(); // state: FEED = 0b1001??
    SELECT = 3u | SELECT_B(2) | SELECT_AON;
    wait_for_interrupt(); // state: FEED = 0b000?????00??????

    SELECT_MORE = 0xFFFF;
    SELECT |= SELECT_RESET;
    wait_for_interrupt(); // state: SELECT = 0, SELECT_MORE = 0x1234
    SELECT = 0x11;
    SELECT_MORE = 0x1235;
    SELECT = anything & SELECT_RESET;
    for (;;)
        wait_for_interrupt(); // state: SELECT = 0, SELECT_MORE = 0b000100100011010?
}

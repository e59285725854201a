/* A lamp that a timer blinks: what the report tests look at. */
#define DDRB (*(volatile unsigned char *)0x24)
#define PORTB (*(volatile unsigned char *)0x25)
#define SMCR (*(volatile unsigned char *)0x53)
#define GPIOR (*(volatile unsigned char *)0x3E)
#define UNKNOWN_REGISTER (*(volatile unsigned char *)0xF0)

static void lamp_on(unsigned char pin)
{
    DDRB |= 1 << pin;
    PORTB |= 1 << pin;
}

int main(void)
{
    lamp_on(5);
    UNKNOWN_REGISTER = 0x21;
    SMCR = 5;
    for (;;)
    {
        __asm__ __volatile__("sleep");
    }
}

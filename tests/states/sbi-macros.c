// device: attiny85
// flags: -DF_CPU=1000000UL
// The old macros for bits, nested macros and token pasting.
#include <avr/io.h>
#include <avr/sleep.h>

#define SBI(reg, bit) ((reg) |= (1 << (bit)))
#define CBI(reg, bit) ((reg) &= ~(1 << (bit)))
#define JOIN(a, b) a##b
#define PORT_OF(x) JOIN(PORT, x)
#define DIRECTION_OF(x) JOIN(DDR, x)
#define OUTPUT(port, bit) SBI(DIRECTION_OF(port), bit)
#define HIGH(port, bit) SBI(PORT_OF(port), bit)
#define LOW(port, bit) CBI(PORT_OF(port), bit)

#define LAMP B, 3
#define PROBE B, 4
#define CALL(macro, arguments) macro(arguments)
#define OUTPUT_(x) OUTPUT(x)
#define SWITCH_ON(...) do { OUTPUT(__VA_ARGS__); HIGH(__VA_ARGS__); } while (0)

int main(void)
{
    SWITCH_ON(LAMP);
    SWITCH_ON(PROBE);
    CBI(PORTB, 4);
    HIGH(B, 0);
    HIGH(B, 1);
    LOW(B, 1);
    CBI(ADCSRA, ADEN);
    SBI(ACSR, ACD);
    SBI(MCUCR, SM1);
    SBI(MCUCR, SE);
    for (;;)
        sleep_cpu(); // state: DDRB = 0x18, PORTB = 0x09
}

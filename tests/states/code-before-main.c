// device: atmega1284p
// Code before main (.init3 and a constructor), and a weak default that nothing in the image replaces.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

void lamp_setup(void) __attribute__((weak));
void lamp_setup(void)
{
    PORTC = 0x0F;
}

void early(void) __attribute__((naked, used, section(".init3")));
void early(void)
{
    MCUSR = 0;
    DDRB = 0xF0;
    PRR0 = 0xEF;
}

static void __attribute__((constructor)) before_main(void)
{
    DDRD = DDRB >> 4;
    DIDR0 = 0xFF;
}

ISR(WDT_vect)
{
    PORTD |= 2;
}

int main(void)
{
    lamp_setup();
    if (DDRD == 0x0F)
        PORTD = 1;
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    sei();
    sleep_cpu(); // state: DDRB = 0xF0, DDRD = 0x0F, DIDR0 = 0xFF, PORTC = 0x0F, PORTA = 0, PRR0 = 0xEF
    cli();
    for (;;) {
        PORTD |= 4;
        sei();
        sleep_cpu(); // state: DDRB = 0xF0, DDRD = 0x0F, PORTD = 0b0000_0111
    }
}

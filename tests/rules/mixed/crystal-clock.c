// device: atmega328p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Seconds from the crystal in power-save; the second timer cannot follow there.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint32_t seconds;
static volatile uint16_t overflows;

ISR(TIMER2_OVF_vect)
{
    seconds++;
}

ISR(TIMER1_OVF_vect)
{
    overflows++;
}

int main(void)
{
    DDRB = 0x3f;
    DDRC = 0x7f;
    DDRD = 0xff;
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS22) | _BV(CS20);
    while (ASSR & (_BV(TCR2BUB) | _BV(TCN2UB)))
        ;
    TIMSK2 = _BV(TOIE2);
    TCCR1B = _BV(CS12); // finding: asleep-in-mode TIMER1 proven warning
    TIMSK1 = _BV(TOIE1);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
        OCR2B = 0;
        while (ASSR & _BV(OCR2BUB))
            ;
    }
}

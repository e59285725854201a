// device: atmega328p
// One sleep for two modes: light while the timer sounds the bell, deep else.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t beats;

ISR(TIMER0_OVF_vect)
{
    beats--;
}

ISR(INT0_vect)
{
    beats = 50;
}

int main(void)
{
    PORTD = _BV(PD2);
    EIMSK = _BV(INT0);
    for (;;) {
        cli();
        if (beats) {
            TCCR0B = _BV(CS02);
            TIMSK0 = _BV(TOIE0);
            set_sleep_mode(SLEEP_MODE_IDLE);
        } else {
            TIMSK0 = 0;
            TCCR0B = 0;
            set_sleep_mode(SLEEP_MODE_PWR_DOWN);
        }
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
}

// device: atmega2560
// A minute of naps by a timer on a watch crystal: 32 of two seconds, where one of its periods takes four times as long.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER2_OVF_vect)

static void nap(uint8_t times)
{
    while (times--)
        sleep_mode();
}

int main(void)
{
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS22) | _BV(CS21); // finding: woken-too-often TIMER2 proven {{counts to 8 then}}
    TIMSK2 = _BV(TOIE2);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        nap(32);
        PORTB ^= _BV(PORTB5);
    }
}

// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// The handler that wakes the part clears the bit, and only the start sets it.
ISR(TIMER2_OVF_vect)
{
    sleep_disable();
}

int main(void)
{
    TCCR2B = _BV(CS22);
    TIMSK2 = _BV(TOIE2);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sleep_enable();
    sei();
    for (;;) {
        sleep_cpu(); // finding: sleep-disabled SLEEP proven error
    }
}

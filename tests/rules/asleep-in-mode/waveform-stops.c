// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// The waveform on PB1 stands still in power-down; the watchdog wakes the part.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    DDRB = _BV(PB1);
    OCR1A = 100;
    TCCR1A = _BV(COM1A1) | _BV(WGM10);
    TCCR1B = _BV(CS10); // finding: asleep-in-mode TIMER1 proven warning {{output}}
    WDTCSR = _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}

// device: attiny84
// flags: -DF_CPU=1000000UL
// A 16-bit timer that compares at ten milliseconds could compare at half a second.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t ticks;

ISR(TIM1_COMPA_vect)
{
    ticks++;
}

int main(void)
{
    TCCR1B = _BV(WGM12) | _BV(CS11);
    OCR1A = 1249; // finding: woken-too-often TIMER1 proven {{10 ms (F_CPU)}}
    TIMSK1 = _BV(OCIE1A);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
        if (ticks >= 50) {
            ticks = 0;
            PORTA ^= _BV(PORTA7);
        }
    }
}

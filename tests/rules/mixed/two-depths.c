// device: atmega328p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Idles while a tone plays, else powers down: the tone's timer is stopped first, so nothing is wrong but the comparator in idle.
// The two ways to the one sleep stay apart: the timer never runs in power-down.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t playing;

ISR(PCINT1_vect)
{
    playing = 1;
}

ISR(TIMER1_OVF_vect)
{
    playing = 0;
}

int main(void)
{
    DDRB = 0xff; // finding: peripheral-on-in-sleep AC proven
    DDRC = 0x7e;
    PORTC = _BV(PC0);
    DDRD = 0xff;
    PCMSK1 = _BV(PCINT8);
    PCICR = _BV(PCIE1);
    sei();
    for (;;) {
        if (playing) {
            TIMSK1 = _BV(TOIE1);
            TCCR1B = _BV(CS11); // clean: asleep-in-mode TIMER1
            // clean@-1: peripheral-on-in-sleep TIMER1
            set_sleep_mode(SLEEP_MODE_IDLE);
        } else {
            TCCR1B = 0;
            TIMSK1 = 0;
            set_sleep_mode(SLEEP_MODE_PWR_DOWN);
        }
        sleep_mode();
    }
}

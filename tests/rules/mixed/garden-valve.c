// device: atmega328p
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// The endless loop is in another function, and its delay in a third; sleeping was put off to later.
#include <avr/io.h>
#include <util/delay.h>

static void pause(uint8_t tenths)
{
    while (tenths--) // finding: busy-wait-delay pause() proven warning {{2 s}}
        _delay_ms(100);
}

static void run(void)
{
    for (;;) { // finding: superloop-without-sleep main() proven warning
        PORTD ^= _BV(PD6);
        pause(20);
    }
}

int main(void)
{
    _delay_ms(9);
    DDRB = 0xff;
    DDRC = 0xff;
    DDRD = 0xff;
    _delay_ms(30); // finding: busy-wait-delay main() proven warning {{30 ms}}
    run();
}

// device: atmega328p
// option: LFUSE.CKOUT = 0
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Never sleeps, polls, and puts the clock on a pin by fuse.
#include <avr/io.h>

static uint8_t limit = 120;

static uint8_t read_channel(uint8_t channel)
{
    ADMUX = _BV(ADLAR) | channel; // finding: analog-pin-buffer-on PC3 proven warning
    ADCSRA |= _BV(ADSC);
    loop_until_bit_is_clear(ADCSRA, ADSC); // finding: polling-wait ADCSRA proven warning
    return ADCH;
}

int main(void)
{
    DDRB = 0xfe; // finding: clock-output-on CLKO PB0 proven warning
    DDRC = 0x77;
    DDRD = 0xff;
    ADCSRA = _BV(ADEN) | 3;
    while (1) { // finding: superloop-without-sleep main() proven warning
        if (read_channel(3) < limit)
            PORTB |= _BV(PB1);
        else
            PORTB &= (uint8_t)~_BV(PB1);
    }
}

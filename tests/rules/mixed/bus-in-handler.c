// device: atmega1284p
// flags: -DF_CPU=8000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// The two-wire bus is driven, flag by flag, from a timer's handler.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void wait_bus(void)
{
    while (!(TWCR & (1 << TWINT))) // finding: polling-wait TWCR proven warning {{TWI_vect}} {{handler}}
        ;
}

ISR(TIMER0_OVF_vect)
{
    TWCR = (1 << TWINT) | (1 << TWSTA) | (1 << TWEN);
    wait_bus();
    TWDR = 0x90;
    TWCR = (1 << TWINT) | (1 << TWEN);
    wait_bus();
    TWCR = (1 << TWINT) | (1 << TWSTO) | (1 << TWEN);
    while (TWCR & (1 << TWSTO))
        ;
    TWCR = 0;
}

int main(void)
{
    PORTA = 0xff;
    PORTB = 0xff;
    PORTC = 0xff;
    PORTD = 0xff;
    ACSR |= 1 << ACD;
    TWBR = 32;
    TCCR0B = (1 << CS02) | (1 << CS00);
    TIMSK0 = 1 << TOIE0;
    sei();
    while (1) {
        set_sleep_mode(SLEEP_MODE_IDLE);
        sleep_mode();
    }
}

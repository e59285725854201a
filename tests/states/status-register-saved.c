// device: atmega328p
// flags: -DF_CPU=8000000UL
// Critical sections that put the status register back.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t overflows;

ISR(TIMER2_OVF_vect)
{
    overflows++;
}

static uint16_t read_overflows(void)
{
    uint8_t status = SREG;
    cli();
    uint16_t value = overflows;
    SREG = status;
    return value;
}

static void configure(void)
{
    uint8_t status = SREG;
    cli();
    TCCR2B = _BV(CS22) | _BV(CS21) | _BV(CS20);
    TIMSK2 = _BV(TOIE2);
    DDRD = 0xFC;
    SREG = status;
}

int main(void)
{
    configure();
    sei();
    PORTD = 0x03;
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    while (read_overflows() < 3)
        sleep_mode(); // state: DDRD = 0xfc, TCCR2B = 0x07
    cli();
    TIMSK2 = 0;
    TCCR2B = 0;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_mode(); // state: TIMSK2 = 0, TCCR2B = 0, SMCR = 0x05
    for (;;)
        ;
}

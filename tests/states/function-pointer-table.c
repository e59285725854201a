// device: attiny85
// flags: -DF_CPU=8000000UL
// Set-up steps kept in a table of functions.
#include <avr/io.h>
#include <avr/sleep.h>

static void pins(void) { DDRB = 0x18; PORTB = 0x07; }
static void converter_off(void) { ADCSRA = 0; PRR |= _BV(PRADC); }
static void comparator_off(void) { ACSR |= _BV(ACD); }
static void timers_off(void) { PRR |= _BV(PRTIM0) | _BV(PRTIM1); }

typedef void (*step_t)(void);

static const step_t steps[] = {pins, converter_off, comparator_off, timers_off, 0};

int main(void)
{
    for (const step_t *step = steps; *step; step++)
        (*step)();
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0x18, PORTB = 0x07, PRR = 0b0000_1101
}

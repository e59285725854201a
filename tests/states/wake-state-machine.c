// device: atmega328p
// flags: -DF_CPU=8000000UL
// Each wake-up moves a state machine on; each state has its own pins and its own way to sleep.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

enum phase { MEASURE, REPORT, REST };

static enum phase phase = MEASURE;

EMPTY_INTERRUPT(WDT_vect)

static void watchdog(uint8_t period)
{
    cli();
    wdt_reset();
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | period;
    sei();
}

int main(void)
{
    DDRB = 0x07;
    PORTC = 0x3F;
    PORTD = 0xFF;
    for (;;) {
        switch (phase) {
        case MEASURE:
            PORTB = 0x01;
            watchdog(_BV(WDP1));
            phase = REPORT;
            set_sleep_mode(SLEEP_MODE_IDLE);
            sleep_mode(); // state: PORTB = 0x01, SMCR = 0x01
            break;
        case REPORT:
            PORTB = 0x02;
            watchdog(_BV(WDP0));
            phase = REST;
            set_sleep_mode(SLEEP_MODE_STANDBY);
            sleep_mode(); // state: PORTB = 0x02, SMCR = 0x0d
            break;
        case REST:
            PORTB = 0x00;
            watchdog(_BV(WDP3) | _BV(WDP0));
            phase = MEASURE;
            set_sleep_mode(SLEEP_MODE_PWR_DOWN);
            sleep_mode(); // state: PORTB = 0x00, SMCR = 0x05
            break;
        }
    }
}

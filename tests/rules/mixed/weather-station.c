// device: atmega328p
// rules: all
// A weather station: gpio structs, a stream, a watchdog tick. Every finding was judged by hand.
#define F_CPU 8000000UL
#include <avr/io.h>
#include <avr/interrupt.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>
#include <util/delay.h>
#include <stdio.h>
#include <stdbool.h>

typedef struct { volatile uint8_t *ddr, *port, *pin; uint8_t bit; } gpio_t;
static const gpio_t LED = { &DDRB, &PORTB, &PINB, 5 };
static const gpio_t BTN = { &DDRD, &PORTD, &PIND, 3 };
static const gpio_t SENSOR_PWR = { &DDRD, &PORTD, &PIND, 6 };

static inline void gpio_out(const gpio_t *g) { *g->ddr |= 1 << g->bit; }
static inline void gpio_in_pullup(const gpio_t *g) { *g->ddr &= ~(1 << g->bit); *g->port |= 1 << g->bit; }
static inline void gpio_set(const gpio_t *g, bool on) { if (on) *g->port |= 1 << g->bit; else *g->port &= ~(1 << g->bit); }

static volatile uint8_t ticks;
static volatile bool button;
static char buf[32];

ISR(WDT_vect) { ticks++; }
ISR(INT1_vect) { button = true; EIMSK &= ~_BV(INT1); }

static void uart_init(void)
{
    UBRR0 = F_CPU / 16 / 9600 - 1;
    UCSR0B = _BV(TXEN0);
}
static int uart_put(char c, FILE *f)
{
    (void)f;
    if (c == '\n') uart_put('\r', f);
    loop_until_bit_is_set(UCSR0A, UDRE0); // finding: polling-wait UCSR0A proven warning
    UDR0 = c;
    return 0;
}
static FILE uart = FDEV_SETUP_STREAM(uart_put, NULL, _FDEV_SETUP_WRITE);

static uint16_t adc_read(uint8_t mux)
{
    ADMUX = _BV(REFS0) | mux; // finding: analog-pin-buffer-on PC0 PC1 proven note
    ADCSRA = _BV(ADEN) | _BV(ADPS2) | _BV(ADPS1);
    ADCSRA |= _BV(ADSC);
    while (ADCSRA & _BV(ADSC)) ; // finding: polling-wait ADCSRA proven warning
    uint16_t v = ADC;
    ADCSRA = 0;
    return v;
}

static void wdt_int_start(uint8_t period)
{
    cli();
    wdt_reset();
    MCUSR &= ~_BV(WDRF);
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | (period & 7) | ((period & 8) << 2);
    sei();
}

static void go_sleep(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    if (!button) {
        EIMSK |= _BV(INT1);
        sleep_enable();
        sleep_bod_disable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
    sei();
}

int main(void)
{
    power_spi_disable(); // finding: floating-pin PB0 PB1 PB2 PB3 PB4 PB6 PB7 proven note
    // finding@-1: peripheral-clock-left-on TIMER0 TIMER1 TIMER2 proven note
    power_twi_disable();
    for (uint8_t i = 0; i < 8; i++) {
        if (i == 3) continue;
        PORTD |= _BV(i);
    }
    gpio_out(&LED);
    gpio_in_pullup(&BTN);
    gpio_out(&SENSOR_PWR);
    PORTC = 0x3f & ~(_BV(0) | _BV(1));
    uart_init();
    stdout = &uart;
    wdt_int_start(9);
    _delay_ms(100); // finding: busy-wait-delay main() proven warning
    while (1) {
        if (ticks >= 8 || button) {
            ticks = 0;
            button = false;
            gpio_set(&SENSOR_PWR, true);
            _delay_ms(5); // finding: busy-wait-delay main() proven warning
            uint16_t t = adc_read(0), h = adc_read(1);
            gpio_set(&SENSOR_PWR, false);
            printf("%u %u\n", t, h);
            sprintf(buf, "%u", t);
        }
        go_sleep();
    }
}

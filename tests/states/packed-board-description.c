// device: atmega1284p
// flags: -DF_CPU=8000000UL
// A packed description of the board with nested structures, arrays and designated initialisers.
#include <avr/io.h>
#include <avr/sleep.h>
#include <string.h>

struct lines {
    uint8_t count;
    struct {
        uint8_t port : 2;
        uint8_t bit : 3;
        uint8_t output : 1;
        uint8_t level : 1;
    } line[8];
} __attribute__((packed));

static const struct {
    struct lines radio;
    struct lines sensor;
    uint8_t sleep;
} board = {
    .sleep = SLEEP_MODE_PWR_DOWN,
    .radio = {.count = 4,
              .line = {{.port = 1, .bit = 4, .output = 1, .level = 1},
                       {.port = 1, .bit = 5, .output = 1},
                       [3] = {.port = 1, .bit = 7, .output = 1, .level = 0},
                       [2] = {.port = 1, .bit = 6, .level = 1}}},
    .sensor = {3, {{0, 0, 0, 0}, {0, 1, 1, 1}, {2, 7, 1, 0}}},
};

static volatile uint8_t *const bases[4] = {&PINA, &PINB, &PINC, &PIND};

static void set_up(struct lines lines)
{
    for (uint8_t i = 0; i < lines.count; i++) {
        volatile uint8_t *base = bases[lines.line[i].port];
        uint8_t mask = 1 << lines.line[i].bit;
        if (lines.line[i].level)
            base[2] |= mask;
        if (lines.line[i].output)
            base[1] |= mask;
    }
}

int main(void)
{
    struct lines copy;
    set_up(board.radio);
    memcpy(&copy, &board.sensor, sizeof copy);
    set_up(copy);
    set_sleep_mode(board.sleep);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0xb0, PORTB = 0x50, DDRA = 0x02, PORTA = 0x02, DDRC = 0x80
}

// The parts that the harness knows: what it must be told because the simulator does not know it or has it otherwise.
// Facts: datasheets of ATmega328P, ATtiny85 and ATmega1284P (register summaries, sleep modes, timed sequences).

#ifndef PARTS_H
#define PARTS_H

#include <stdint.h>

enum mode { IDLE, ADC_MODE, POWER_DOWN, POWER_SAVE, STANDBY, EXTENDED_STANDBY, RESERVED };

static const char *const mode_names[] = {
    "idle", "adc", "power-down", "power-save", "standby", "extended-standby", "reserved"};

typedef struct {
    uint16_t address;
    uint8_t mask;
} bits_t;

typedef struct {
    const char *name;
    uint16_t sleep_control;
    uint8_t sleep_enable, mode_shift, mode_mask;
    uint8_t modes[8];
    uint16_t clock_prescale, watchdog, reset_cause, twi_control, assr;
    uint16_t flags[8];         // registers whose bits are cleared by writing one
    bits_t strobes[10];        // bits that read back 0
    bits_t exist[48];          // bits of a register that exist; the simulator keeps all eight
    bits_t after_reset[12];    // registers whose value after reset the simulator misses: address, value
    uint16_t timer_reset_hold; // GTCCR: while TSM is set, the prescaler resets stay set
    uint8_t timer_reset_bits;
    int edges_need_io_clock; // edges on INTn are seen in idle mode only
} part_t;

static const part_t parts[] = {
    {
        .name = "atmega328p",
        .sleep_control = 0x53,
        .sleep_enable = 0x01,
        .mode_shift = 1,
        .mode_mask = 7,
        .modes = {IDLE, ADC_MODE, POWER_DOWN, POWER_SAVE, RESERVED, RESERVED, STANDBY, EXTENDED_STANDBY},
        .clock_prescale = 0x61,
        .watchdog = 0x60,
        .reset_cause = 0x54,
        .twi_control = 0xbc,
        .assr = 0xb6,
        .flags = {0x35, 0x36, 0x37, 0x3b, 0x3c},
        .strobes = {{0x45, 0xf0}, {0x82, 0xff}, {0xb1, 0xf0}},
        .exist = {{0x26, 0x7f}, {0x27, 0x7f}, {0x28, 0x7f}, {0x3d, 0x03}, {0x44, 0xf3}, {0x53, 0x0f}, {0x54, 0x0f},
                  {0x55, 0x73}, {0x64, 0xef}, {0x68, 0x07}, {0x69, 0x0f}, {0x6c, 0x7f}, {0x6e, 0x07}, {0x6f, 0x27},
                  {0x70, 0x07}, {0x7b, 0x47}, {0x7c, 0xef}, {0x7e, 0x3f}, {0x7f, 0x03}, {0x80, 0xf3}, {0x81, 0xdf},
                  {0xb0, 0xf3}, {0xb6, 0x60}, {0xbd, 0xfe}, {0xc5, 0x0f}},
        .after_reset = {{0xb9, 0xf8}, {0xba, 0xfe}, {0xbb, 0xff}, {0xc1, 0x00}, {0xc2, 0x06}},
        .timer_reset_hold = 0x43,
        .timer_reset_bits = 0x03,
        .edges_need_io_clock = 1,
    },
    {
        .name = "atmega1284p",
        .sleep_control = 0x53,
        .sleep_enable = 0x01,
        .mode_shift = 1,
        .mode_mask = 7,
        .modes = {IDLE, ADC_MODE, POWER_DOWN, POWER_SAVE, RESERVED, RESERVED, STANDBY, EXTENDED_STANDBY},
        .clock_prescale = 0x61,
        .watchdog = 0x60,
        .reset_cause = 0x54,
        .twi_control = 0xbc,
        .assr = 0xb6,
        .flags = {0x35, 0x36, 0x37, 0x38, 0x3b, 0x3c},
        .strobes = {{0x45, 0xf0}, {0x82, 0xff}, {0x92, 0xff}, {0xb1, 0xf0}},
        .exist = {{0x3d, 0x07}, {0x44, 0xf3}, {0x53, 0x0f}, {0x54, 0x1f}, {0x55, 0xf3}, {0x65, 0x01}, {0x68, 0x0f},
                  {0x69, 0x3f}, {0x6e, 0x07}, {0x6f, 0x27}, {0x70, 0x07}, {0x71, 0x27}, {0x7b, 0x47}, {0x7f, 0x03},
                  {0x80, 0xf3}, {0x81, 0xdf}, {0x90, 0xf3}, {0x91, 0xdf}, {0xb0, 0xf3}, {0xb6, 0x60}, {0xbd, 0xfe},
                  {0xc5, 0x0f}, {0xcd, 0x0f}},
        .after_reset = {{0xb9, 0xf8}, {0xba, 0xfe}, {0xbb, 0xff}, {0xc1, 0x00}, {0xc2, 0x06}, {0xc9, 0x00}, {0xca, 0x06}},
        .timer_reset_hold = 0x43,
        .timer_reset_bits = 0x03,
        .edges_need_io_clock = 0,
    },
    {
        .name = "attiny85",
        .sleep_control = 0x55,
        .sleep_enable = 0x20,
        .mode_shift = 3,
        .mode_mask = 3,
        .modes = {IDLE, ADC_MODE, POWER_DOWN, RESERVED},
        .clock_prescale = 0x46,
        .watchdog = 0x41,
        .reset_cause = 0x54,
        .flags = {0x58, 0x5a},
        .strobes = {{0x53, 0xf0}, {0x4c, 0x0c}},
        .exist = {{0x23, 0xe7}, {0x34, 0x3f}, {0x35, 0x3f}, {0x36, 0x3f}, {0x37, 0x3f}, {0x38, 0x3f}, {0x40, 0x0f},
                  {0x43, 0x03}, {0x47, 0x86}, {0x4a, 0xf3}, {0x54, 0x0f}, {0x59, 0x7e}, {0x5b, 0x60}},
        .after_reset = {{0x4d, 0xff}},
        .timer_reset_hold = 0x4c,
        .timer_reset_bits = 0x03,
        .edges_need_io_clock = 1,
    },
};

#endif

// Runs AVR images under libsimavr one instruction at a time and prints the I/O registers at every SLEEP instruction.
//
// usage: harness < jobs
// A job is one line:  MCU HERTZ SEED MAX_SLEEPS MAX_INSTRUCTIONS SRAM_FROM SRAM_BYTES ELF
// For each job it prints
//   J <job number>
//   S <pc> <sleep enabled> <mode> <interrupts on> <I/O space 0x20..0xff in hex> <SRAM window in hex, or ->
//   E <why it ended> <instructions> <cycles>
//
// The simulator differs from the part in ways that change register states; what is put right here is marked "part:".
// Facts about the parts: datasheets of ATmega328P, ATtiny85 and ATmega1284P (registers, sleep modes, timed sequences).

#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include <simavr/avr_adc.h>
#include <simavr/avr_extint.h>
#include <simavr/avr_ioport.h>
#include <simavr/avr_timer.h>
#include <simavr/avr_uart.h>
#include <simavr/avr_watchdog.h>
#include <simavr/sim_avr.h>
#include <simavr/sim_core.h>
#include <simavr/sim_elf.h>

DEFINE_FIFO(avr_int_vector_p, avr_int_pending);

enum mode { IDLE, ADC_MODE, POWER_DOWN, POWER_SAVE, STANDBY, EXTENDED_STANDBY, RESERVED };

static const char *const mode_names[] = {
    "idle", "adc", "power-down", "power-save", "standby", "extended-standby", "reserved"};

// ---- parts ---------------------------------------------------------------------------------------------------------

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

// ---- one run -------------------------------------------------------------------------------------------------------

typedef struct {
    avr_io_write_t call;
    void *param;
} write_hook_t;

static const part_t *part;
static avr_t *avr;
static uint32_t random_state;
static write_hook_t hooks[MAX_IOs];
static avr_cycle_count_t prescale_unlocked;
static avr_adc_t *adc;
static avr_watchdog_t *watchdog;
static avr_extint_t *external;
static avr_ioport_t *ports[8];
static int port_count;
static avr_timer_t *timers[4];
static int timer_count;
static avr_uart_t *uarts[2];
static int uart_count;

static uint32_t pick(uint32_t below) {
    random_state ^= random_state << 13;
    random_state ^= random_state >> 17;
    random_state ^= random_state << 5;
    return random_state % below;
}

static void store(avr_io_addr_t address, uint8_t value) {
    write_hook_t *hook = &hooks[address - 32];
    if (hook->call)
        hook->call(avr, address, value, hook->param);
    else
        avr->data[address] = value;
}

static void intercept(avr_io_addr_t address, avr_io_write_t call) {
    write_hook_t *hook = &hooks[address - 32];
    if (avr->io[address - 32].w.c == call)
        return;
    hook->call = avr->io[address - 32].w.c;
    hook->param = avr->io[address - 32].w.param;
    avr->io[address - 32].w.c = call;
    avr->io[address - 32].w.param = NULL;
}

// part: a flag is cleared by writing one to it, the others stay.
static void write_flags(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    for (int i = 0; i < avr->interrupts.vector_count; i++) {
        avr_int_vector_t *vector = avr->interrupts.vector[i];
        if (vector->raised.reg == address && (value >> vector->raised.bit & 1))
            avr_clear_interrupt(avr, vector);
    }
    avr->data[address] &= ~value;
}

// part: the same for a flag that shares its register with control bits.
static uint8_t settle_flag(avr_int_vector_t *vector, avr_io_addr_t address, uint8_t value) {
    uint8_t bit = 1 << vector->raised.bit;
    if (value & bit) {
        avr_clear_interrupt(avr, vector);
        return value & ~bit;
    }
    return value | (avr->data[address] & bit);
}

static void write_adc_control(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    store(address, settle_flag(&adc->adc, address, value));
}

static void write_watchdog(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    store(address, settle_flag(&watchdog->watchdog, address, value));
}

static void write_shared_flag(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    for (int i = 0; i < avr->interrupts.vector_count; i++)
        if (avr->interrupts.vector[i]->raised.reg == address)
            value = settle_flag(avr->interrupts.vector[i], address, value);
    store(address, value);
}

// part: TWEA does not depend on TWEN.
static void write_twi_control(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    store(address, value);
    avr->data[address] = (avr->data[address] & ~0x40) | (value & 0x40);
}

static avr_cycle_count_t close_prescale(avr_t *a, avr_cycle_count_t when, void *param) {
    (void)a;
    (void)when;
    (void)param;
    avr->data[part->clock_prescale] &= 0x7f;
    prescale_unlocked = 0;
    return 0;
}

// part: CLKPCE alone opens CLKPS for four cycles.
static void write_prescale(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    if (value == 0x80) {
        avr->data[address] |= 0x80;
        prescale_unlocked = avr->cycle + 1;
        avr_cycle_timer_register(avr, 5, close_prescale, NULL);
    } else if (!(value & 0x80) && prescale_unlocked) {
        avr->data[address] = value & 0x0f;
        prescale_unlocked = 0;
        avr_cycle_timer_cancel(avr, close_prescale, NULL);
    }
}

// part: strobes read back 0; prescaler resets too unless TSM holds them.
static void write_strobes(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    for (const bits_t *strobe = part->strobes; strobe->address; strobe++)
        if (strobe->address == address)
            value &= ~strobe->mask;
    if (address == part->timer_reset_hold && !(value & 0x80))
        value &= ~part->timer_reset_bits;
    store(address, value);
}

// part: bits that do not exist read 0.
static void write_existing(avr_t *a, avr_io_addr_t address, uint8_t value, void *param) {
    (void)a;
    (void)param;
    for (const bits_t *exist = part->exist; exist->address; exist++)
        if (exist->address == address)
            value &= exist->mask;
    store(address, value);
}

// Bits of a port that have a pin.
static uint8_t pins_of(const avr_ioport_t *port) {
    for (const bits_t *exist = part->exist; exist->address; exist++)
        if (exist->address == port->r_port)
            return exist->mask;
    return 0xff;
}

static void on_conversion(struct avr_irq_t *irq, uint32_t value, void *param) {
    (void)irq;
    (void)value;
    (void)param;
    for (int i = 0; i < 8; i++)
        avr_raise_irq(adc->io.irq + ADC_IRQ_ADC0 + i, pick(3300));
}

static void find_modules(void) {
    adc = NULL;
    watchdog = NULL;
    external = NULL;
    port_count = timer_count = uart_count = 0;
    for (avr_io_t *io = avr->io_port; io; io = io->next) {
        if (!strcmp(io->kind, "adc"))
            adc = (avr_adc_t *)io;
        else if (!strcmp(io->kind, "watchdog"))
            watchdog = (avr_watchdog_t *)io;
        else if (!strcmp(io->kind, "extint"))
            external = (avr_extint_t *)io;
        else if (!strcmp(io->kind, "port") && port_count < 8)
            ports[port_count++] = (avr_ioport_t *)io;
        else if (!strcmp(io->kind, "timer") && timer_count < 4)
            timers[timer_count++] = (avr_timer_t *)io;
        else if (!strcmp(io->kind, "uart") && uart_count < 2)
            uarts[uart_count++] = (avr_uart_t *)io;
    }
}

// What has to be put right after every reset.
static void after_reset(void) {
    for (const bits_t *reset = part->after_reset; reset->address; reset++)
        avr->data[reset->address] = reset->mask;
    prescale_unlocked = 0;
    for (int i = 0; i < EXTINT_COUNT; i++)
        external->eint[i].strict_lvl_trig = 0; // levels are looked at in look_at_levels()
    for (int t = 0; t < timer_count; t++)
        for (int c = 0; c < AVR_TIMER_COMP_COUNT; c++) {
            // part: PORTx never changes by itself; a compare output overrides the pin, not the register.
            avr_ioport_getirq_t request = {.bit = timers[t]->comp[c].com_pin};
            if (request.bit.reg && avr_ioctl(avr, AVR_IOCTL_IOPORT_GETIRQ_REGBIT, &request) > 0)
                avr_unconnect_irq(&timers[t]->io.irq[TIMER_IRQ_OUT_COMP + c], request.irq[0]);
        }
}

static void install(void) {
    memset(hooks, 0, sizeof hooks);
    for (int i = 0; part->flags[i]; i++)
        intercept(part->flags[i], write_flags);
    for (const bits_t *strobe = part->strobes; strobe->address; strobe++)
        intercept(strobe->address, write_strobes);
    for (const bits_t *exist = part->exist; exist->address; exist++)
        intercept(exist->address, write_existing);
    intercept(part->timer_reset_hold, write_strobes);
    intercept(adc->r_adcsra, write_adc_control);
    intercept(part->watchdog, write_watchdog);
    intercept(part->clock_prescale, write_prescale);
    if (part->twi_control)
        intercept(part->twi_control, write_twi_control);
    for (int i = 0; i < avr->interrupts.vector_count; i++) {
        avr_io_addr_t address = avr->interrupts.vector[i]->raised.reg;
        if (address && avr->interrupts.vector[i]->enable.reg == address && address != adc->r_adcsra &&
            address != part->watchdog && address != part->twi_control && !avr->interrupts.vector[i]->raise_sticky)
            intercept(address, write_shared_flag); // ACSR, SPI
    }
    for (int u = 0; u < uart_count; u++) {
        uint32_t none = 0;
        avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS(uarts[u]->name), &none);
    }
    avr_irq_register_notify(adc->io.irq + ADC_IRQ_OUT_TRIGGER, on_conversion, NULL);
}

static int enabled(avr_int_vector_t *vector) {
    return vector->vector && vector->enable.reg && avr_regbit_get(avr, vector->enable);
}

// part: a flag that is set raises its interrupt as soon as that is enabled.
static void look_at_flags(void) {
    for (int i = 0; i < avr->interrupts.vector_count; i++) {
        avr_int_vector_t *vector = avr->interrupts.vector[i];
        if (!vector->pending && !vector->raise_sticky && vector->raised.reg && avr_regbit_get(avr, vector->raised) &&
            enabled(vector))
            avr_raise_interrupt(avr, vector);
    }
}

static avr_irq_t *pin_irq(int eint) {
    return avr_io_getirq(avr, external->eint[eint].port_ioctl, external->eint[eint].port_pin);
}

// part: a low level on INTn in level mode requests an interrupt for as long as it lasts.
static void look_at_levels(void) {
    for (int i = 0; i < EXTINT_COUNT; i++) {
        if (!external->eint[i].port_ioctl || !external->eint[i].isc[1].reg || !enabled(&external->eint[i].vector))
            continue;
        if (avr_regbit_get_array(avr, external->eint[i].isc, 2) == 0 && !pin_irq(i)->value)
            avr_raise_interrupt(avr, &external->eint[i].vector);
    }
}

static int pending_enabled(void) {
    for (int i = 0; i < avr->interrupts.vector_count; i++)
        if (avr->interrupts.vector[i]->pending && enabled(avr->interrupts.vector[i]))
            return 1;
    return 0;
}

static void flush_stale(void) {
    avr_int_pending_t *queue = &avr->interrupts.pending;
    avr_int_vector_t *kept[64];
    int count = 0;
    while (!avr_int_pending_isempty(queue)) {
        avr_int_vector_t *vector = avr_int_pending_read(queue);
        int known = 0;
        for (int i = 0; i < count; i++)
            known |= kept[i] == vector;
        if (vector->pending && enabled(vector) && !known)
            kept[count++] = vector;
        else if (!known)
            vector->pending = 0;
    }
    for (int i = 0; i < count; i++)
        avr_int_pending_write(queue, kept[i]);
}

// Dispatches what is pending. part: WDIE is cleared by its interrupt only while WDE is set.
static void serve(void) {
    uint8_t before = avr->data[part->watchdog];
    avr_service_interrupts(avr);
    uint8_t after = avr->data[part->watchdog];
    if ((before & 0x40) && !(after & 0x40) && !(before & 0x08))
        avr->data[part->watchdog] = after | 0x40;
}

static int runs_in(void *module, enum mode mode) {
    if (mode == IDLE || module == NULL)
        return 1;
    for (avr_io_t *io = avr->io_port; io; io = io->next) {
        if ((void *)io != module)
            continue;
        if (io == &watchdog->io || !strcmp(io->kind, "port") || !strcmp(io->kind, "extint"))
            return 1;
        if (!strcmp(io->kind, "adc") || !strcmp(io->kind, "eeprom"))
            return mode == ADC_MODE;
        if (!strcmp(io->kind, "timer") && ((avr_timer_t *)io)->name == '2') {
            int asynchronous = part->assr && (avr->data[part->assr] & 0x20);
            return mode == POWER_SAVE || (asynchronous && (mode == ADC_MODE || mode == EXTENDED_STANDBY));
        }
        return 0;
    }
    return 1;
}

// Timer events of modules that stand still are taken off the list and put back later.
static avr_cycle_timer_slot_p freeze(enum mode mode) {
    avr_cycle_timer_pool_t *pool = &avr->cycle_timers;
    avr_cycle_timer_slot_p frozen = NULL, *link = &pool->timer;
    while (*link) {
        avr_cycle_timer_slot_p slot = *link;
        if (runs_in(slot->param, mode)) {
            link = &slot->next;
        } else {
            *link = slot->next;
            slot->next = frozen;
            frozen = slot;
        }
    }
    return frozen;
}

static void thaw(avr_cycle_timer_slot_p frozen, enum mode mode, avr_cycle_count_t slept) {
    avr_cycle_timer_pool_t *pool = &avr->cycle_timers;
    while (frozen) {
        avr_cycle_timer_slot_p slot = frozen, *link = &pool->timer;
        frozen = slot->next;
        slot->when += slept;
        while (*link && (*link)->when <= slot->when)
            link = &(*link)->next;
        slot->next = *link;
        *link = slot;
    }
    for (int t = 0; t < timer_count; t++)
        if (!runs_in(timers[t], mode) && timers[t]->tov_cycles)
            timers[t]->tov_base += slept;
}

// ---- the outside world ---------------------------------------------------------------------------------------------

// Inputs that nothing watches take any level; so do watched ones on waking from something else.
static void shake_inputs(void) {
    for (int p = 0; p < port_count; p++)
        for (int bit = 0; bit < 8; bit++) {
            uint8_t mask = 1 << bit;
            int watched = ports[p]->r_pcint && (avr->data[ports[p]->r_pcint] & mask);
            for (int i = 0; i < EXTINT_COUNT; i++)
                watched |= external->eint[i].port_ioctl == (uint32_t)AVR_IOCTL_IOPORT_GETIRQ(ports[p]->name) &&
                           external->eint[i].port_pin == bit;
            if (!watched && (pins_of(ports[p]) & ~avr->data[ports[p]->r_ddr] & mask))
                avr_raise_irq(ports[p]->io.irq + bit, pick(2));
        }
}

typedef struct {
    avr_irq_t *pin;     // to change
    int eint;           // or -1
    avr_uart_t *serial; // or NULL
} stimulus_t;

static int find_stimuli(enum mode mode, stimulus_t *found, int most) {
    int count = 0;
    for (int i = 0; i < EXTINT_COUNT && count < most; i++) {
        if (!external->eint[i].port_ioctl || !enabled(&external->eint[i].vector))
            continue;
        int sense = avr_regbit_get_array(avr, external->eint[i].isc, 2);
        if (sense == 0 || mode == IDLE || !part->edges_need_io_clock)
            found[count++] = (stimulus_t){.pin = pin_irq(i), .eint = i};
    }
    for (int p = 0; p < port_count; p++) {
        if (!ports[p]->r_pcint || !enabled(&ports[p]->pcint))
            continue;
        uint8_t watched = avr->data[ports[p]->r_pcint] & ~avr->data[ports[p]->r_ddr] & pins_of(ports[p]);
        for (int bit = 0; bit < 8 && count < most; bit++)
            if (watched >> bit & 1)
                found[count++] = (stimulus_t){.pin = ports[p]->io.irq + bit, .eint = -1};
    }
    for (int u = 0; u < uart_count && count < most; u++)
        if (mode == IDLE && enabled(&uarts[u]->rxc) && avr_regbit_get(avr, uarts[u]->rxen))
            found[count++] = (stimulus_t){.eint = -1, .serial = uarts[u]};
    return count;
}

static void give(stimulus_t *stimulus) {
    if (stimulus->serial) {
        avr_raise_irq(stimulus->serial->io.irq + UART_IRQ_INPUT, pick(256));
        return;
    }
    if (stimulus->eint < 0) {
        avr_raise_irq(stimulus->pin, !stimulus->pin->value);
        return;
    }
    int sense = avr_regbit_get_array(avr, external->eint[stimulus->eint].isc, 2);
    if (sense == 0) {
        avr_raise_irq(stimulus->pin, 0);
        look_at_levels();
    } else {
        avr_raise_irq(stimulus->pin, sense == 3 ? 0 : 1);
        avr_raise_irq(stimulus->pin, sense == 3 ? 1 : 0);
    }
}

// ---- sleeping ------------------------------------------------------------------------------------------------------

static void print_sleep(int on, enum mode mode, unsigned from, unsigned bytes) {
    uint8_t status = 0;
    READ_SREG_INTO(avr, status);
    avr->data[R_SREG] = status;
    printf("S %x %d %s %d ", avr->pc, on, mode_names[mode], avr->sreg[S_I]);
    for (int address = 0x20; address <= 0xff; address++)
        printf("%02x", avr->data[address]);
    putchar(' ');
    if (!bytes)
        putchar('-');
    for (unsigned i = 0; i < bytes; i++)
        printf("%02x", from + i <= avr->ramend ? avr->data[from + i] : 0);
    putchar('\n');
}

static int was_reset(void) { return avr->run != avr_callback_run_raw; }

static void do_reset(void) {
    uint8_t cause = avr->data[part->reset_cause];
    avr->run(avr); // the watchdog's callback resets and puts the old one back
    after_reset();
    avr->data[part->reset_cause] |= cause; // part: reset causes add up
    avr->state = cpu_Running;
}

// Lets time pass until something wakes the part. Returns 0 if nothing ever does.
static int sleep_until_wake(enum mode mode) {
    avr_cycle_count_t start = avr->cycle;
    stimulus_t stimuli[64];
    int woken = 0;

    // part: with the converter on, entering idle or ADC mode starts a conversion.
    if ((mode == IDLE || mode == ADC_MODE) && avr_regbit_get(avr, adc->aden) && !avr_regbit_get(avr, adc->adsc) &&
        enabled(&adc->adc))
        store(adc->r_adcsra, (avr->data[adc->r_adcsra] & ~(1 << adc->adc.raised.bit)) | 1 << adc->adsc.bit);

    avr_cycle_timer_slot_p frozen = freeze(mode);
    int count = find_stimuli(mode, stimuli, 64);
    int early = count && pick(2);
    avr_irq_t *held = NULL;
    for (int event = 0; event < 20000; event++) {
        if (was_reset()) {
            thaw(frozen, mode, avr->cycle - start);
            return 2;
        }
        if (pending_enabled() && avr->sreg[S_I]) {
            woken = 1;
            break;
        }
        avr_cycle_timer_slot_p next = avr->cycle_timers.timer;
        if (count && avr->sreg[S_I] && (early || !next || event > 2000)) {
            stimulus_t *chosen = &stimuli[pick(count)];
            avr->cycle += 1 + pick(5000);
            if (next && avr->cycle > next->when)
                avr->cycle = next->when;
            give(chosen);
            if (chosen->eint >= 0)
                held = chosen->pin;
            early = 0;
            if (chosen->serial)
                continue;
            if (!pending_enabled())
                count = 0;
            continue;
        }
        if (!next)
            break;
        if (next->when > avr->cycle)
            avr->cycle = next->when;
        avr_cycle_timer_process(avr);
    }
    avr->cycle += 4;
    thaw(frozen, mode, avr->cycle - start);
    if (!woken)
        return 0;
    shake_inputs();
    avr->pc += 2;
    avr->interrupt_state = 1;
    serve();
    if (held)
        avr_raise_irq(held, 1);
    return 1;
}

static int is_flag_register(unsigned address) {
    for (int i = 0; part->flags[i]; i++)
        if (part->flags[i] == address)
            return 1;
    for (int p = 0; p < port_count; p++)
        if (ports[p]->r_pin == address)
            return 1;
    return 0;
}

static const char *run(long most_sleeps, long most_instructions, unsigned from, unsigned bytes, long *instructions) {
    long sleeps = 0;
    for (*instructions = 0; *instructions < most_instructions; ++*instructions) {
        if (avr->pc + 1 >= avr->codeend + 4)
            return "off-the-end";
        unsigned opcode = avr->flash[avr->pc] | avr->flash[avr->pc + 1] << 8;
        if (opcode == 0x9588) {
            int on = !!(avr->data[part->sleep_control] & part->sleep_enable);
            enum mode mode = part->modes[avr->data[part->sleep_control] >> part->mode_shift & part->mode_mask];
            print_sleep(on, mode, from, bytes);
            if (++sleeps >= most_sleeps)
                return "sleeps";
            avr->cycle++;
            if (!on) { // part: then it is a NOP
                avr->pc += 2;
                avr_cycle_timer_process(avr);
                continue;
            }
            avr_cycle_timer_process(avr);
            look_at_flags();
            look_at_levels();
            flush_stale();
            switch (sleep_until_wake(mode)) {
            case 0:
                return "asleep";
            case 2:
                do_reset();
                break;
            }
            continue;
        }

        avr_flashaddr_t next;
        unsigned io = 0x20 + (opcode >> 3 & 0x1f);
        if ((opcode & 0xff00) == 0x9a00 && is_flag_register(io)) {
            // part: SBI writes one bit of these.
            avr->io[io - 32].w.c(avr, io, 1 << (opcode & 7), avr->io[io - 32].w.param);
            avr->cycle += 2;
            next = avr->pc + 2;
        } else {
            next = avr_run_one(avr);
        }
        avr_cycle_timer_process(avr);
        avr->pc = next;
        if (was_reset()) {
            do_reset();
            continue;
        }
        if (avr->state != cpu_Running)
            return "crash";
        if ((*instructions & 15) == 0 && avr->sreg[S_I]) {
            look_at_flags();
            look_at_levels();
        }
        if (avr->interrupt_state)
            serve();
    }
    return "instructions";
}

static void quiet(avr_t *a, const int level, const char *format, va_list arguments) {
    (void)a;
    (void)level;
    (void)format;
    (void)arguments;
}

static int job(const char *line) {
    char name[32], elf[1024];
    unsigned hertz, seed, from, bytes;
    long sleeps, instructions, done = 0;
    if (sscanf(line, "%31s %u %u %ld %ld %u %u %1023[^\n]", name, &hertz, &seed, &sleeps, &instructions, &from, &bytes,
               elf) != 8) {
        printf("E bad-job 0 0\n");
        return 1;
    }
    for (unsigned i = 0; i < sizeof parts / sizeof *parts; i++)
        if (!strcmp(parts[i].name, name))
            part = &parts[i];
    elf_firmware_t firmware = {0};
    avr_global_logger_set(quiet);
    if (!part || elf_read_firmware(elf, &firmware) != 0 || !(avr = avr_make_mcu_by_name(name))) {
        printf("E cannot-load 0 0\n");
        return 1;
    }
    avr_init(avr);
    firmware.frequency = hertz;
    avr_load_firmware(avr, &firmware);
    avr->frequency = hertz;
    avr->vcc = avr->avcc = avr->aref = 3300;
    random_state = (seed * 2654435761u + 88172645u) | 1;
    find_modules();
    install();
    after_reset();
    for (int p = 0; p < port_count; p++)
        for (int bit = 0; bit < 8; bit++)
            avr_raise_irq(ports[p]->io.irq + bit, pins_of(ports[p]) >> bit & 1);
    for (int i = 0; i < avr->interrupts.vector_count; i++)
        if (avr->interrupts.vector[i]->raised.reg && !avr->interrupts.vector[i]->raise_sticky)
            avr_regbit_clear(avr, avr->interrupts.vector[i]->raised);
    const char *why = run(sleeps, instructions, from, bytes, &done);
    printf("E %s %ld %llu %x\n", why, done, (unsigned long long)avr->cycle, avr->pc);
    return 0;
}

int main(void) {
    char line[1400];
    static char buffer[1 << 16];
    setvbuf(stdout, buffer, _IOFBF, sizeof buffer);
    for (long number = 0; fgets(line, sizeof line, stdin); number++) {
        printf("J %ld\n", number);
        fflush(stdout);
        // A process each: the library keeps state, and a crash ends one job only.
        pid_t child = fork();
        if (child == 0) {
            int result = job(line);
            fflush(stdout);
            _exit(result);
        }
        int status = 0;
        waitpid(child, &status, 0);
        if (WIFSIGNALED(status))
            printf("E killed-by-signal-%d 0 0 0\n", WTERMSIG(status));
        fflush(stdout);
    }
    return 0;
}

// Makes the simulator behave as the part does where register states depend on it. Each correction is marked "part:".

#ifndef CORRECTIONS_H
#define CORRECTIONS_H

#include <string.h>

#include <simavr/avr_adc.h>
#include <simavr/avr_extint.h>
#include <simavr/avr_ioport.h>
#include <simavr/avr_timer.h>
#include <simavr/avr_uart.h>
#include <simavr/avr_watchdog.h>
#include <simavr/sim_avr.h>
#include <simavr/sim_core.h>

#include "parts.h"

DEFINE_FIFO(avr_int_vector_p, avr_int_pending);

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

#endif

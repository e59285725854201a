// Runs AVR images under libsimavr one instruction at a time and prints the I/O registers at every SLEEP instruction.
//
// usage: harness < jobs
// A job is one line:  MCU HERTZ SEED MAX_SLEEPS MAX_INSTRUCTIONS SRAM_FROM SRAM_BYTES ELF
// For each job it prints
//   J <job number>
//   S <pc> <sleep enabled> <mode> <interrupts on> <I/O space 0x20..0xff in hex> <SRAM window in hex, or ->
//   E <why it ended> <instructions> <cycles>
//
// The simulator differs from the part in ways that change register states: corrections.h puts them right.

#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

#include <simavr/sim_elf.h>

#include "corrections.h"

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

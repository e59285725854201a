#include "log.h"

#include "board.h"

#define WRITE_ENABLE 0x06
#define WRITE 0x02
#define DEEP_POWER_DOWN 0xB9
#define WAKE 0xAB

static uint32_t next;
static const uint8_t *volatile sending;
static volatile uint8_t left;

/* A byte goes out with each interrupt, and the CPU sleeps meanwhile: the interface keeps its clock running by itself. */
static void send(const uint8_t *bytes, uint8_t count)
{
    P2OUT &= (uint8_t)~FLASH_SELECT;
    sending = bytes;
    left = count;
    UCB0IE = UCRXIE;
    __disable_interrupt();
    UCB0TXBUF = *sending;
    while (left > 0) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
    UCB0IE = 0;
    P2OUT |= FLASH_SELECT;
}

/* What comes back tells that the byte is out. */
#pragma vector = USCI_B0_VECTOR
__interrupt void on_byte(void)
{
    (void)UCB0RXBUF;
    sending++;
    if (--left > 0)
        UCB0TXBUF = *sending;
    else
        __bic_SR_register_on_exit(LPM3_bits);
}

static void send_command(uint8_t command)
{
    send(&command, 1);
}

void log_init(void)
{
    P2OUT |= FLASH_SELECT;
    P3SEL |= FLASH_WIRES;
    UCB0CTL0 = UCCKPH | UCMSB | UCMST | UCSYNC;
    UCB0CTL1 = UCSSEL_2 | UCSWRST;
    UCB0BR0 = 2;
    UCB0BR1 = 0;
    UCB0CTL1 &= (uint8_t)~UCSWRST;
    send_command(DEEP_POWER_DOWN);
}

void log_append(uint16_t hour, uint16_t count)
{
    uint8_t line[8];

    line[0] = WRITE;
    line[1] = (uint8_t)(next >> 16);
    line[2] = (uint8_t)(next >> 8);
    line[3] = (uint8_t)next;
    line[4] = (uint8_t)(hour >> 8);
    line[5] = (uint8_t)hour;
    line[6] = (uint8_t)(count >> 8);
    line[7] = (uint8_t)count;
    next += 4;
    send_command(WAKE);
    send_command(WRITE_ENABLE);
    send(line, sizeof line);
    send_command(DEEP_POWER_DOWN);
}

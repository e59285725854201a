#include "radio.h"

#include <stdbool.h>

#include "board.h"

static volatile bool is_sent;

static void command(uint8_t strobe)
{
    while (!(RF1AIFCTL1 & RFINSTRIFG))
        ;
    RF1AINSTRB = strobe;
    while (!(RF1AIFCTL1 & RFSTATIFG))
        ;
}

static void set(uint8_t address, uint8_t value)
{
    while (!(RF1AIFCTL1 & RFINSTRIFG))
        ;
    RF1AINSTRW = ((RF_SNGLREGWR + address) << 8) + value;
}

static void fill(const uint8_t *bytes, uint8_t count)
{
    while (!(RF1AIFCTL1 & RFINSTRIFG))
        ;
    RF1AINSTRW = ((unsigned int)RF_TXFIFOWR << 8) + bytes[0];
    for (uint8_t i = 1; i < count; i++) {
        RF1ADINB = bytes[i];
        while (!(RF1AIFCTL1 & RFDINIFG))
            ;
    }
}

void radio_init(void)
{
    command(RF_SRES);
    set(IOCFG0, 0x06);
    set(PKTLEN, 3);
    set(PKTCTRL0, 0x04);
    set(FREQ2, 0x21);
    set(FREQ1, 0x65);
    set(FREQ0, 0x6A);
    command(RF_SPWD);
}

void radio_send(uint16_t number, uint8_t value)
{
    uint8_t packet[3];

    packet[0] = (uint8_t)(number >> 8);
    packet[1] = (uint8_t)number;
    packet[2] = value;
    command(RF_SIDLE);
    fill(packet, sizeof packet);
    RF1AIES |= BIT9;
    RF1AIFG &= ~BIT9;
    RF1AIE |= BIT9;
    is_sent = false;
    command(RF_STX);
    __disable_interrupt();
    while (!is_sent) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
    RF1AIE &= ~BIT9;
    command(RF_SPWD);
}

#pragma vector = CC1101_VECTOR
__interrupt void on_packet(void)
{
    if (RF1AIV == RF1AIV_RFIFG9) {
        is_sent = true;
        __bic_SR_register_on_exit(LPM3_bits);
    }
}

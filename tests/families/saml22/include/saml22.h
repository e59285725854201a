/* The registers of the SAM L22 that the firmware here uses, named as the part's own header names them: a union of the whole
   register and of its bits. Places and names from public header files, see documents in devices/saml22.yaml. */
#ifndef SAML22_H
#define SAML22_H
#include <stdint.h>

typedef enum {
    SYSTEM_IRQn = 0,
    WDT_IRQn = 1,
    RTC_IRQn = 2,
    EIC_IRQn = 3,
    USB_IRQn = 5,
    DMAC_IRQn = 7,
    SERCOM0_IRQn = 9,
    SERCOM1_IRQn = 10,
    TCC0_IRQn = 15,
    TC0_IRQn = 16,
    TC1_IRQn = 17,
    ADC_IRQn = 20,
    AC_IRQn = 21,
    SLCD_IRQn = 23,
    TRNG_IRQn = 25
} IRQn_Type;

#include "core_cm.h"

typedef union { struct { uint8_t : 2; uint8_t IORET : 1; uint8_t : 5; } bit; uint8_t reg; } PM_CTRLA_Type;
typedef union { struct { uint8_t SLEEPMODE : 3; uint8_t : 5; } bit; uint8_t reg; } PM_SLEEPCFG_Type;
typedef union { struct { uint8_t PLSEL : 2; uint8_t : 5; uint8_t PLDIS : 1; } bit; uint8_t reg; } PM_PLCFG_Type;
typedef union { struct { uint8_t PLRDY : 1; uint8_t : 7; } bit; uint8_t reg; } PM_INTENCLR_Type;
typedef union { struct { uint8_t PLRDY : 1; uint8_t : 7; } bit; uint8_t reg; } PM_INTENSET_Type;
typedef union { struct { uint8_t PLRDY : 1; uint8_t : 7; } bit; uint8_t reg; } PM_INTFLAG_Type;
typedef union { struct { uint16_t : 6; uint16_t VREGSMOD : 2; uint16_t : 2; uint16_t BBIASHS : 2; uint16_t : 4; } bit; uint16_t reg; } PM_STDBYCFG_Type;
typedef struct {
    volatile PM_CTRLA_Type CTRLA;
    volatile PM_SLEEPCFG_Type SLEEPCFG;
    volatile PM_PLCFG_Type PLCFG;
    uint8_t RESERVED0[1];
    volatile PM_INTENCLR_Type INTENCLR;
    volatile PM_INTENSET_Type INTENSET;
    volatile PM_INTFLAG_Type INTFLAG;
    uint8_t RESERVED1[1];
    volatile PM_STDBYCFG_Type STDBYCFG;
} Pm;

typedef union { struct { uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 5; uint32_t VREGRDY : 1; uint32_t APWSRDY : 1; uint32_t VCORERDY : 1; uint32_t : 21; } bit; uint32_t reg; } SUPC_INTENCLR_Type;
typedef union { struct { uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 5; uint32_t VREGRDY : 1; uint32_t APWSRDY : 1; uint32_t VCORERDY : 1; uint32_t : 21; } bit; uint32_t reg; } SUPC_INTENSET_Type;
typedef union { struct { uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 5; uint32_t VREGRDY : 1; uint32_t APWSRDY : 1; uint32_t VCORERDY : 1; uint32_t : 21; } bit; uint32_t reg; } SUPC_INTFLAG_Type;
typedef union { struct { uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 5; uint32_t VREGRDY : 1; uint32_t APWSRDY : 1; uint32_t VCORERDY : 1; uint32_t BBPS : 1; uint32_t : 20; } bit; uint32_t reg; } SUPC_STATUS_Type;
typedef union { struct { uint32_t : 1; uint32_t ENABLE : 1; uint32_t HYST : 1; uint32_t ACTION : 2; uint32_t STDBYCFG : 1; uint32_t RUNSTDBY : 1; uint32_t RUNBKUP : 1; uint32_t ACTCFG : 1; uint32_t : 1; uint32_t VMON : 1; uint32_t : 1; uint32_t PSEL : 4; uint32_t LEVEL : 6; uint32_t : 2; uint32_t BKUPLEVEL : 6; uint32_t : 2; } bit; uint32_t reg; } SUPC_BOD33_Type;
typedef union { struct { uint32_t : 1; uint32_t ENABLE : 1; uint32_t SEL : 2; uint32_t : 2; uint32_t RUNSTDBY : 1; uint32_t : 1; uint32_t LPEFF : 1; uint32_t : 7; uint32_t VSVSTEP : 4; uint32_t : 4; uint32_t VSPER : 8; } bit; uint32_t reg; } SUPC_VREG_Type;
typedef union { struct { uint32_t : 1; uint32_t TSEN : 1; uint32_t VREFOE : 1; uint32_t : 3; uint32_t RUNSTDBY : 1; uint32_t ONDEMAND : 1; uint32_t : 8; uint32_t SEL : 4; uint32_t : 12; } bit; uint32_t reg; } SUPC_VREF_Type;
typedef union { struct { uint32_t CONF : 2; uint32_t WAKEEN : 1; uint32_t PSOKEN : 1; uint32_t : 28; } bit; uint32_t reg; } SUPC_BBPS_Type;
typedef union { uint32_t reg; } SUPC_BKOUT_Type;
typedef struct {
    volatile SUPC_INTENCLR_Type INTENCLR;
    volatile SUPC_INTENSET_Type INTENSET;
    volatile SUPC_INTFLAG_Type INTFLAG;
    volatile SUPC_STATUS_Type STATUS;
    volatile SUPC_BOD33_Type BOD33;
    uint8_t RESERVED0[4];
    volatile SUPC_VREG_Type VREG;
    volatile SUPC_VREF_Type VREF;
    volatile SUPC_BBPS_Type BBPS;
    volatile SUPC_BKOUT_Type BKOUT;
} Supc;

typedef union { uint32_t reg; } OSCCTRL_INTENCLR_Type;
typedef union { uint32_t reg; } OSCCTRL_INTENSET_Type;
typedef union { uint32_t reg; } OSCCTRL_INTFLAG_Type;
typedef union { struct { uint32_t XOSCRDY : 1; uint32_t : 3; uint32_t OSC16MRDY : 1; uint32_t : 3; uint32_t DFLLRDY : 1; uint32_t : 23; } bit; uint32_t reg; } OSCCTRL_STATUS_Type;
typedef union { struct { uint16_t : 1; uint16_t ENABLE : 1; uint16_t XTALEN : 1; uint16_t : 3; uint16_t RUNSTDBY : 1; uint16_t ONDEMAND : 1; uint16_t : 4; uint16_t STARTUP : 4; } bit; uint16_t reg; } OSCCTRL_XOSCCTRL_Type;
typedef union { struct { uint8_t : 1; uint8_t ENABLE : 1; uint8_t FSEL : 2; uint8_t : 2; uint8_t RUNSTDBY : 1; uint8_t ONDEMAND : 1; } bit; uint8_t reg; } OSCCTRL_OSC16MCTRL_Type;
typedef union { struct { uint16_t : 1; uint16_t ENABLE : 1; uint16_t MODE : 1; uint16_t STABLE : 1; uint16_t LLAW : 1; uint16_t USBCRM : 1; uint16_t RUNSTDBY : 1; uint16_t ONDEMAND : 1; uint16_t CCDIS : 1; uint16_t QLDIS : 1; uint16_t BPLCKC : 1; uint16_t WAITLOCK : 1; uint16_t : 4; } bit; uint16_t reg; } OSCCTRL_DFLLCTRL_Type;
typedef union { uint32_t reg; } OSCCTRL_DFLLVAL_Type;
typedef union { uint32_t reg; } OSCCTRL_DFLLMUL_Type;
typedef union { struct { uint8_t : 1; uint8_t ENABLE : 1; uint8_t : 4; uint8_t RUNSTDBY : 1; uint8_t ONDEMAND : 1; } bit; uint8_t reg; } OSCCTRL_DPLLCTRLA_Type;
typedef union { uint32_t reg; } OSCCTRL_DPLLRATIO_Type;
typedef union { struct { uint32_t : 4; uint32_t REFCLK : 2; uint32_t : 26; } bit; uint32_t reg; } OSCCTRL_DPLLCTRLB_Type;
typedef struct {
    volatile OSCCTRL_INTENCLR_Type INTENCLR;
    volatile OSCCTRL_INTENSET_Type INTENSET;
    volatile OSCCTRL_INTFLAG_Type INTFLAG;
    volatile OSCCTRL_STATUS_Type STATUS;
    volatile OSCCTRL_XOSCCTRL_Type XOSCCTRL;
    uint8_t RESERVED0[2];
    volatile OSCCTRL_OSC16MCTRL_Type OSC16MCTRL;
    uint8_t RESERVED1[3];
    volatile OSCCTRL_DFLLCTRL_Type DFLLCTRL;
    uint8_t RESERVED2[2];
    volatile OSCCTRL_DFLLVAL_Type DFLLVAL;
    volatile OSCCTRL_DFLLMUL_Type DFLLMUL;
    uint8_t RESERVED3[4];
    volatile OSCCTRL_DPLLCTRLA_Type DPLLCTRLA;
    uint8_t RESERVED4[3];
    volatile OSCCTRL_DPLLRATIO_Type DPLLRATIO;
    volatile OSCCTRL_DPLLCTRLB_Type DPLLCTRLB;
} Oscctrl;

typedef union { uint32_t reg; } OSC32KCTRL_INTENCLR_Type;
typedef union { uint32_t reg; } OSC32KCTRL_INTENSET_Type;
typedef union { uint32_t reg; } OSC32KCTRL_INTFLAG_Type;
typedef union { struct { uint32_t XOSC32KRDY : 1; uint32_t : 31; } bit; uint32_t reg; } OSC32KCTRL_STATUS_Type;
typedef union { struct { uint8_t RTCSEL : 3; uint8_t : 5; } bit; uint8_t reg; } OSC32KCTRL_RTCCTRL_Type;
typedef union { struct { uint8_t SLCDSEL : 1; uint8_t : 7; } bit; uint8_t reg; } OSC32KCTRL_SLCDCTRL_Type;
typedef union { struct { uint16_t : 1; uint16_t ENABLE : 1; uint16_t XTALEN : 1; uint16_t EN32K : 1; uint16_t EN1K : 1; uint16_t : 1; uint16_t RUNSTDBY : 1; uint16_t ONDEMAND : 1; uint16_t STARTUP : 3; uint16_t : 1; uint16_t WRTLOCK : 1; uint16_t : 3; } bit; uint16_t reg; } OSC32KCTRL_XOSC32K_Type;
typedef union { struct { uint32_t : 8; uint32_t CALIB : 5; uint32_t : 2; uint32_t WRTLOCK : 1; uint32_t : 16; } bit; uint32_t reg; } OSC32KCTRL_OSCULP32K_Type;
typedef struct {
    volatile OSC32KCTRL_INTENCLR_Type INTENCLR;
    volatile OSC32KCTRL_INTENSET_Type INTENSET;
    volatile OSC32KCTRL_INTFLAG_Type INTFLAG;
    volatile OSC32KCTRL_STATUS_Type STATUS;
    volatile OSC32KCTRL_RTCCTRL_Type RTCCTRL;
    volatile OSC32KCTRL_SLCDCTRL_Type SLCDCTRL;
    uint8_t RESERVED0[2];
    volatile OSC32KCTRL_XOSC32K_Type XOSC32K;
    uint8_t RESERVED1[6];
    volatile OSC32KCTRL_OSCULP32K_Type OSCULP32K;
} Osc32kctrl;

typedef union { uint8_t reg; } MCLK_CPUDIV_Type;
typedef union { uint8_t reg; } MCLK_BUPDIV_Type;
typedef union { struct { uint32_t HPB0_ : 1; uint32_t HPB1_ : 1; uint32_t HPB2_ : 1; uint32_t DMAC_ : 1; uint32_t USB_ : 1; uint32_t DSU_ : 1; uint32_t : 1; uint32_t PAC_ : 1; uint32_t NVMCTRL_ : 1; uint32_t HSRAM_ : 1; uint32_t NVMCTRL_PICACHU_ : 1; uint32_t : 21; } bit; uint32_t reg; } MCLK_AHBMASK_Type;
typedef union { struct { uint32_t PAC_ : 1; uint32_t PM_ : 1; uint32_t MCLK_ : 1; uint32_t RSTC_ : 1; uint32_t OSCCTRL_ : 1; uint32_t OSC32KCTRL_ : 1; uint32_t SUPC_ : 1; uint32_t GCLK_ : 1; uint32_t WDT_ : 1; uint32_t RTC_ : 1; uint32_t EIC_ : 1; uint32_t FREQM_ : 1; uint32_t : 20; } bit; uint32_t reg; } MCLK_APBAMASK_Type;
typedef union { struct { uint32_t USB_ : 1; uint32_t DSU_ : 1; uint32_t NVMCTRL_ : 1; uint32_t PORT_ : 1; uint32_t : 28; } bit; uint32_t reg; } MCLK_APBBMASK_Type;
typedef union { struct { uint32_t EVSYS_ : 1; uint32_t SERCOM0_ : 1; uint32_t SERCOM1_ : 1; uint32_t SERCOM2_ : 1; uint32_t SERCOM3_ : 1; uint32_t SERCOM4_ : 1; uint32_t SERCOM5_ : 1; uint32_t TCC0_ : 1; uint32_t TC0_ : 1; uint32_t TC1_ : 1; uint32_t TC2_ : 1; uint32_t TC3_ : 1; uint32_t ADC_ : 1; uint32_t AC_ : 1; uint32_t PTC_ : 1; uint32_t SLCD_ : 1; uint32_t AES_ : 1; uint32_t TRNG_ : 1; uint32_t CCL_ : 1; uint32_t : 13; } bit; uint32_t reg; } MCLK_APBCMASK_Type;
typedef struct {
    uint8_t RESERVED0[4];
    volatile MCLK_CPUDIV_Type CPUDIV;
    uint8_t RESERVED1[1];
    volatile MCLK_BUPDIV_Type BUPDIV;
    uint8_t RESERVED2[9];
    volatile MCLK_AHBMASK_Type AHBMASK;
    volatile MCLK_APBAMASK_Type APBAMASK;
    volatile MCLK_APBBMASK_Type APBBMASK;
    volatile MCLK_APBCMASK_Type APBCMASK;
} Mclk;

typedef union { struct { uint8_t SWRST : 1; uint8_t : 7; } bit; uint8_t reg; } GCLK_CTRLA_Type;
typedef union { uint32_t reg; } GCLK_SYNCBUSY_Type;
typedef union { struct { uint32_t SRC : 5; uint32_t : 3; uint32_t GENEN : 1; uint32_t IDC : 1; uint32_t OOV : 1; uint32_t OE : 1; uint32_t DIVSEL : 1; uint32_t RUNSTDBY : 1; uint32_t : 2; uint32_t DIV : 16; } bit; uint32_t reg; } GCLK_GENCTRL_Type;
typedef union { struct { uint32_t GEN : 4; uint32_t : 2; uint32_t CHEN : 1; uint32_t WRTLOCK : 1; uint32_t : 24; } bit; uint32_t reg; } GCLK_PCHCTRL_Type;
typedef struct {
    volatile GCLK_CTRLA_Type CTRLA;
    uint8_t RESERVED0[3];
    volatile GCLK_SYNCBUSY_Type SYNCBUSY;
    uint8_t RESERVED1[24];
    volatile GCLK_GENCTRL_Type GENCTRL[5];
    uint8_t RESERVED2[76];
    volatile GCLK_PCHCTRL_Type PCHCTRL[30];
} Gclk;

typedef union { struct { uint16_t SWRST : 1; uint16_t ENABLE : 1; uint16_t MODE : 2; uint16_t : 2; uint16_t CLKREP : 1; uint16_t MATCHCLR : 1; uint16_t PRESCALER : 4; uint16_t : 3; uint16_t COUNTSYNC : 1; } bit; uint16_t reg; } RTC_MODE0_CTRLA_Type;
typedef union { struct { uint32_t PEREO : 8; uint32_t CMPEO0 : 1; uint32_t CMPEO1 : 1; uint32_t : 4; uint32_t TAMPEREO : 1; uint32_t OVFEO : 1; uint32_t : 16; } bit; uint32_t reg; } RTC_MODE0_EVCTRL_Type;
typedef union { struct { uint16_t PER0 : 1; uint16_t PER1 : 1; uint16_t PER2 : 1; uint16_t PER3 : 1; uint16_t PER4 : 1; uint16_t PER5 : 1; uint16_t PER6 : 1; uint16_t PER7 : 1; uint16_t CMP0 : 1; uint16_t CMP1 : 1; uint16_t : 4; uint16_t TAMPER : 1; uint16_t OVF : 1; } bit; uint16_t reg; } RTC_MODE0_INTENCLR_Type;
typedef union { struct { uint16_t PER0 : 1; uint16_t PER1 : 1; uint16_t PER2 : 1; uint16_t PER3 : 1; uint16_t PER4 : 1; uint16_t PER5 : 1; uint16_t PER6 : 1; uint16_t PER7 : 1; uint16_t CMP0 : 1; uint16_t CMP1 : 1; uint16_t : 4; uint16_t TAMPER : 1; uint16_t OVF : 1; } bit; uint16_t reg; } RTC_MODE0_INTENSET_Type;
typedef union { struct { uint16_t PER0 : 1; uint16_t PER1 : 1; uint16_t PER2 : 1; uint16_t PER3 : 1; uint16_t PER4 : 1; uint16_t PER5 : 1; uint16_t PER6 : 1; uint16_t PER7 : 1; uint16_t CMP0 : 1; uint16_t CMP1 : 1; uint16_t : 4; uint16_t TAMPER : 1; uint16_t OVF : 1; } bit; uint16_t reg; } RTC_MODE0_INTFLAG_Type;
typedef union { uint32_t reg; } RTC_MODE0_SYNCBUSY_Type;
typedef union { uint32_t reg; } RTC_MODE0_COUNT_Type;
typedef union { uint32_t reg; } RTC_MODE0_COMP_Type;
typedef struct {
    volatile RTC_MODE0_CTRLA_Type CTRLA;
    uint8_t RESERVED0[2];
    volatile RTC_MODE0_EVCTRL_Type EVCTRL;
    volatile RTC_MODE0_INTENCLR_Type INTENCLR;
    volatile RTC_MODE0_INTENSET_Type INTENSET;
    volatile RTC_MODE0_INTFLAG_Type INTFLAG;
    uint8_t RESERVED1[2];
    volatile RTC_MODE0_SYNCBUSY_Type SYNCBUSY;
    uint8_t RESERVED2[4];
    volatile RTC_MODE0_COUNT_Type COUNT;
    uint8_t RESERVED3[4];
    volatile RTC_MODE0_COMP_Type COMP;
} RtcMode0;

typedef union {
    RtcMode0 MODE0;
} Rtc;

typedef union { struct { uint8_t SWRST : 1; uint8_t ENABLE : 1; uint8_t : 2; uint8_t CKSEL : 1; uint8_t : 3; } bit; uint8_t reg; } EIC_CTRLA_Type;
typedef union { struct { uint8_t NMISENSE : 3; uint8_t NMIFILTEN : 1; uint8_t NMIASYNCH : 1; uint8_t : 3; } bit; uint8_t reg; } EIC_NMICTRL_Type;
typedef union { struct { uint16_t NMI : 1; uint16_t : 15; } bit; uint16_t reg; } EIC_NMIFLAG_Type;
typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t : 30; } bit; uint32_t reg; } EIC_SYNCBUSY_Type;
typedef union { uint32_t reg; } EIC_EVCTRL_Type;
typedef union { struct { uint32_t EXTINT0 : 1; uint32_t EXTINT1 : 1; uint32_t EXTINT2 : 1; uint32_t EXTINT3 : 1; uint32_t EXTINT4 : 1; uint32_t EXTINT5 : 1; uint32_t EXTINT6 : 1; uint32_t EXTINT7 : 1; uint32_t EXTINT8 : 1; uint32_t EXTINT9 : 1; uint32_t EXTINT10 : 1; uint32_t EXTINT11 : 1; uint32_t EXTINT12 : 1; uint32_t EXTINT13 : 1; uint32_t EXTINT14 : 1; uint32_t EXTINT15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_INTENCLR_Type;
typedef union { struct { uint32_t EXTINT0 : 1; uint32_t EXTINT1 : 1; uint32_t EXTINT2 : 1; uint32_t EXTINT3 : 1; uint32_t EXTINT4 : 1; uint32_t EXTINT5 : 1; uint32_t EXTINT6 : 1; uint32_t EXTINT7 : 1; uint32_t EXTINT8 : 1; uint32_t EXTINT9 : 1; uint32_t EXTINT10 : 1; uint32_t EXTINT11 : 1; uint32_t EXTINT12 : 1; uint32_t EXTINT13 : 1; uint32_t EXTINT14 : 1; uint32_t EXTINT15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_INTENSET_Type;
typedef union { struct { uint32_t EXTINT0 : 1; uint32_t EXTINT1 : 1; uint32_t EXTINT2 : 1; uint32_t EXTINT3 : 1; uint32_t EXTINT4 : 1; uint32_t EXTINT5 : 1; uint32_t EXTINT6 : 1; uint32_t EXTINT7 : 1; uint32_t EXTINT8 : 1; uint32_t EXTINT9 : 1; uint32_t EXTINT10 : 1; uint32_t EXTINT11 : 1; uint32_t EXTINT12 : 1; uint32_t EXTINT13 : 1; uint32_t EXTINT14 : 1; uint32_t EXTINT15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_INTFLAG_Type;
typedef union { struct { uint32_t ASYNCH0 : 1; uint32_t ASYNCH1 : 1; uint32_t ASYNCH2 : 1; uint32_t ASYNCH3 : 1; uint32_t ASYNCH4 : 1; uint32_t ASYNCH5 : 1; uint32_t ASYNCH6 : 1; uint32_t ASYNCH7 : 1; uint32_t ASYNCH8 : 1; uint32_t ASYNCH9 : 1; uint32_t ASYNCH10 : 1; uint32_t ASYNCH11 : 1; uint32_t ASYNCH12 : 1; uint32_t ASYNCH13 : 1; uint32_t ASYNCH14 : 1; uint32_t ASYNCH15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_ASYNCH_Type;
typedef union { struct { uint32_t SENSE0 : 3; uint32_t FILTEN0 : 1; uint32_t SENSE1 : 3; uint32_t FILTEN1 : 1; uint32_t SENSE2 : 3; uint32_t FILTEN2 : 1; uint32_t SENSE3 : 3; uint32_t FILTEN3 : 1; uint32_t SENSE4 : 3; uint32_t FILTEN4 : 1; uint32_t SENSE5 : 3; uint32_t FILTEN5 : 1; uint32_t SENSE6 : 3; uint32_t FILTEN6 : 1; uint32_t SENSE7 : 3; uint32_t FILTEN7 : 1; } bit; uint32_t reg; } EIC_CONFIG_Type;
typedef struct {
    volatile EIC_CTRLA_Type CTRLA;
    volatile EIC_NMICTRL_Type NMICTRL;
    volatile EIC_NMIFLAG_Type NMIFLAG;
    volatile EIC_SYNCBUSY_Type SYNCBUSY;
    volatile EIC_EVCTRL_Type EVCTRL;
    volatile EIC_INTENCLR_Type INTENCLR;
    volatile EIC_INTENSET_Type INTENSET;
    volatile EIC_INTFLAG_Type INTFLAG;
    volatile EIC_ASYNCH_Type ASYNCH;
    volatile EIC_CONFIG_Type CONFIG[2];
} Eic;

typedef union { struct { uint8_t : 1; uint8_t ENABLE : 1; uint8_t WEN : 1; uint8_t : 4; uint8_t ALWAYSON : 1; } bit; uint8_t reg; } WDT_CTRLA_Type;
typedef union { struct { uint8_t PER : 4; uint8_t WINDOW : 4; } bit; uint8_t reg; } WDT_CONFIG_Type;
typedef union { struct { uint8_t EWOFFSET : 4; uint8_t : 4; } bit; uint8_t reg; } WDT_EWCTRL_Type;
typedef union { struct { uint8_t EW : 1; uint8_t : 7; } bit; uint8_t reg; } WDT_INTENCLR_Type;
typedef union { struct { uint8_t EW : 1; uint8_t : 7; } bit; uint8_t reg; } WDT_INTENSET_Type;
typedef union { struct { uint8_t EW : 1; uint8_t : 7; } bit; uint8_t reg; } WDT_INTFLAG_Type;
typedef union { uint32_t reg; } WDT_SYNCBUSY_Type;
typedef union { uint8_t reg; } WDT_CLEAR_Type;
typedef struct {
    volatile WDT_CTRLA_Type CTRLA;
    volatile WDT_CONFIG_Type CONFIG;
    volatile WDT_EWCTRL_Type EWCTRL;
    uint8_t RESERVED0[1];
    volatile WDT_INTENCLR_Type INTENCLR;
    volatile WDT_INTENSET_Type INTENSET;
    volatile WDT_INTFLAG_Type INTFLAG;
    uint8_t RESERVED1[1];
    volatile WDT_SYNCBUSY_Type SYNCBUSY;
    volatile WDT_CLEAR_Type CLEAR;
} Wdt;

typedef union { uint32_t reg; } PORT_DIR_Type;
typedef union { uint32_t reg; } PORT_DIRCLR_Type;
typedef union { uint32_t reg; } PORT_DIRSET_Type;
typedef union { uint32_t reg; } PORT_DIRTGL_Type;
typedef union { uint32_t reg; } PORT_OUT_Type;
typedef union { uint32_t reg; } PORT_OUTCLR_Type;
typedef union { uint32_t reg; } PORT_OUTSET_Type;
typedef union { uint32_t reg; } PORT_OUTTGL_Type;
typedef union { uint32_t reg; } PORT_IN_Type;
typedef union { uint32_t reg; } PORT_CTRL_Type;
typedef union { struct { uint32_t PINMASK : 16; uint32_t PMUXEN : 1; uint32_t INEN : 1; uint32_t PULLEN : 1; uint32_t : 3; uint32_t DRVSTR : 1; uint32_t : 1; uint32_t PMUX : 4; uint32_t WRPMUX : 1; uint32_t : 1; uint32_t WRPINCFG : 1; uint32_t HWSEL : 1; } bit; uint32_t reg; } PORT_WRCONFIG_Type;
typedef union { struct { uint8_t PMUXE : 4; uint8_t PMUXO : 4; } bit; uint8_t reg; } PORT_PMUX_Type;
typedef union { struct { uint8_t PMUXEN : 1; uint8_t INEN : 1; uint8_t PULLEN : 1; uint8_t : 3; uint8_t DRVSTR : 1; uint8_t : 1; } bit; uint8_t reg; } PORT_PINCFG_Type;
typedef struct {
    volatile PORT_DIR_Type DIR;
    volatile PORT_DIRCLR_Type DIRCLR;
    volatile PORT_DIRSET_Type DIRSET;
    volatile PORT_DIRTGL_Type DIRTGL;
    volatile PORT_OUT_Type OUT;
    volatile PORT_OUTCLR_Type OUTCLR;
    volatile PORT_OUTSET_Type OUTSET;
    volatile PORT_OUTTGL_Type OUTTGL;
    volatile PORT_IN_Type IN;
    volatile PORT_CTRL_Type CTRL;
    volatile PORT_WRCONFIG_Type WRCONFIG;
    uint8_t RESERVED0[4];
    volatile PORT_PMUX_Type PMUX[16];
    volatile PORT_PINCFG_Type PINCFG[32];
    uint8_t RESERVED1[32];
} PortGroup;

typedef struct {
    PortGroup Group[3];
} Port;

typedef union { struct { uint8_t SWRST : 1; uint8_t ENABLE : 1; uint8_t : 4; uint8_t RUNSTDBY : 1; uint8_t ONDEMAND : 1; } bit; uint8_t reg; } ADC_CTRLA_Type;
typedef union { struct { uint8_t PRESCALER : 3; uint8_t : 5; } bit; uint8_t reg; } ADC_CTRLB_Type;
typedef union { struct { uint8_t REFSEL : 4; uint8_t : 3; uint8_t REFCOMP : 1; } bit; uint8_t reg; } ADC_REFCTRL_Type;
typedef union { struct { uint8_t FLUSHEI : 1; uint8_t STARTEI : 1; uint8_t FLUSHINV : 1; uint8_t STARTINV : 1; uint8_t RESRDYEO : 1; uint8_t WINMONEO : 1; uint8_t : 2; } bit; uint8_t reg; } ADC_EVCTRL_Type;
typedef union { struct { uint8_t RESRDY : 1; uint8_t OVERRUN : 1; uint8_t WINMON : 1; uint8_t : 5; } bit; uint8_t reg; } ADC_INTENCLR_Type;
typedef union { struct { uint8_t RESRDY : 1; uint8_t OVERRUN : 1; uint8_t WINMON : 1; uint8_t : 5; } bit; uint8_t reg; } ADC_INTENSET_Type;
typedef union { struct { uint8_t RESRDY : 1; uint8_t OVERRUN : 1; uint8_t WINMON : 1; uint8_t : 5; } bit; uint8_t reg; } ADC_INTFLAG_Type;
typedef union { struct { uint16_t MUXPOS : 5; uint16_t : 3; uint16_t MUXNEG : 5; uint16_t : 3; } bit; uint16_t reg; } ADC_INPUTCTRL_Type;
typedef union { struct { uint8_t FLUSH : 1; uint8_t START : 1; uint8_t : 6; } bit; uint8_t reg; } ADC_SWTRIG_Type;
typedef union { uint16_t reg; } ADC_SYNCBUSY_Type;
typedef union { uint16_t reg; } ADC_RESULT_Type;
typedef struct {
    volatile ADC_CTRLA_Type CTRLA;
    volatile ADC_CTRLB_Type CTRLB;
    volatile ADC_REFCTRL_Type REFCTRL;
    volatile ADC_EVCTRL_Type EVCTRL;
    volatile ADC_INTENCLR_Type INTENCLR;
    volatile ADC_INTENSET_Type INTENSET;
    volatile ADC_INTFLAG_Type INTFLAG;
    uint8_t RESERVED0[1];
    volatile ADC_INPUTCTRL_Type INPUTCTRL;
    uint8_t RESERVED1[14];
    volatile ADC_SWTRIG_Type SWTRIG;
    uint8_t RESERVED2[7];
    volatile ADC_SYNCBUSY_Type SYNCBUSY;
    uint8_t RESERVED3[2];
    volatile ADC_RESULT_Type RESULT;
} Adc;

typedef union { struct { uint8_t SWRST : 1; uint8_t ENABLE : 1; uint8_t : 6; } bit; uint8_t reg; } AC_CTRLA_Type;
typedef union { struct { uint16_t COMPEO0 : 1; uint16_t COMPEO1 : 1; uint16_t : 2; uint16_t WINEO0 : 1; uint16_t : 11; } bit; uint16_t reg; } AC_EVCTRL_Type;
typedef union { struct { uint8_t COMP0 : 1; uint8_t COMP1 : 1; uint8_t : 2; uint8_t WIN0 : 1; uint8_t : 3; } bit; uint8_t reg; } AC_INTENCLR_Type;
typedef union { struct { uint8_t COMP0 : 1; uint8_t COMP1 : 1; uint8_t : 2; uint8_t WIN0 : 1; uint8_t : 3; } bit; uint8_t reg; } AC_INTENSET_Type;
typedef union { struct { uint8_t COMP0 : 1; uint8_t COMP1 : 1; uint8_t : 2; uint8_t WIN0 : 1; uint8_t : 3; } bit; uint8_t reg; } AC_INTFLAG_Type;
typedef union { struct { uint32_t : 1; uint32_t ENABLE : 1; uint32_t SINGLE : 1; uint32_t INTSEL : 2; uint32_t : 1; uint32_t RUNSTDBY : 1; uint32_t : 1; uint32_t MUXNEG : 3; uint32_t : 1; uint32_t MUXPOS : 3; uint32_t SWAP : 1; uint32_t SPEED : 2; uint32_t : 10; uint32_t OUT : 2; uint32_t : 2; } bit; uint32_t reg; } AC_COMPCTRL_Type;
typedef struct {
    volatile AC_CTRLA_Type CTRLA;
    uint8_t RESERVED0[1];
    volatile AC_EVCTRL_Type EVCTRL;
    volatile AC_INTENCLR_Type INTENCLR;
    volatile AC_INTENSET_Type INTENSET;
    volatile AC_INTFLAG_Type INTFLAG;
    uint8_t RESERVED1[9];
    volatile AC_COMPCTRL_Type COMPCTRL[2];
} Ac;

typedef union { struct { uint8_t : 1; uint8_t ENABLE : 1; uint8_t : 4; uint8_t RUNSTDBY : 1; uint8_t : 1; } bit; uint8_t reg; } TRNG_CTRLA_Type;
typedef union { struct { uint8_t DATARDY : 1; uint8_t : 7; } bit; uint8_t reg; } TRNG_INTENCLR_Type;
typedef union { struct { uint8_t DATARDY : 1; uint8_t : 7; } bit; uint8_t reg; } TRNG_INTENSET_Type;
typedef struct {
    volatile TRNG_CTRLA_Type CTRLA;
    uint8_t RESERVED0[7];
    volatile TRNG_INTENCLR_Type INTENCLR;
    volatile TRNG_INTENSET_Type INTENSET;
} Trng;

typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t DUTY : 3; uint32_t WMOD : 1; uint32_t RUNSTDBY : 1; uint32_t : 25; } bit; uint32_t reg; } SLCD_CTRLA_Type;
typedef union { struct { uint8_t FC0O : 1; uint8_t FC1O : 1; uint8_t FC2O : 1; uint8_t VLCDRT : 1; uint8_t VLCDST : 1; uint8_t PRST : 1; uint8_t : 2; } bit; uint8_t reg; } SLCD_INTENCLR_Type;
typedef union { struct { uint8_t FC0O : 1; uint8_t FC1O : 1; uint8_t FC2O : 1; uint8_t VLCDRT : 1; uint8_t VLCDST : 1; uint8_t PRST : 1; uint8_t : 2; } bit; uint8_t reg; } SLCD_INTENSET_Type;
typedef union { struct { uint8_t FC0O : 1; uint8_t FC1O : 1; uint8_t FC2O : 1; uint8_t VLCDRT : 1; uint8_t VLCDST : 1; uint8_t PRST : 1; uint8_t : 2; } bit; uint8_t reg; } SLCD_INTFLAG_Type;
typedef union { uint32_t reg; } SLCD_SYNCBUSY_Type;
typedef struct {
    volatile SLCD_CTRLA_Type CTRLA;
    uint8_t RESERVED0[9];
    volatile SLCD_INTENCLR_Type INTENCLR;
    volatile SLCD_INTENSET_Type INTENSET;
    volatile SLCD_INTFLAG_Type INTFLAG;
    uint8_t RESERVED1[4];
    volatile SLCD_SYNCBUSY_Type SYNCBUSY;
} Slcd;

typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t MODE : 3; uint32_t : 2; uint32_t RUNSTDBY : 1; uint32_t : 24; } bit; uint32_t reg; } SERCOM_USART_CTRLA_Type;
typedef union { struct { uint32_t : 9; uint32_t SFDE : 1; uint32_t : 6; uint32_t TXEN : 1; uint32_t RXEN : 1; uint32_t : 14; } bit; uint32_t reg; } SERCOM_USART_CTRLB_Type;
typedef union { uint16_t reg; } SERCOM_USART_BAUD_Type;
typedef union { struct { uint8_t DRE : 1; uint8_t TXC : 1; uint8_t RXC : 1; uint8_t RXS : 1; uint8_t CTSIC : 1; uint8_t RXBRK : 1; uint8_t : 1; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_USART_INTENCLR_Type;
typedef union { struct { uint8_t DRE : 1; uint8_t TXC : 1; uint8_t RXC : 1; uint8_t RXS : 1; uint8_t CTSIC : 1; uint8_t RXBRK : 1; uint8_t : 1; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_USART_INTENSET_Type;
typedef union { struct { uint8_t DRE : 1; uint8_t TXC : 1; uint8_t RXC : 1; uint8_t RXS : 1; uint8_t CTSIC : 1; uint8_t RXBRK : 1; uint8_t : 1; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_USART_INTFLAG_Type;
typedef union { uint16_t reg; } SERCOM_USART_STATUS_Type;
typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t SYSOP : 1; uint32_t : 29; } bit; uint32_t reg; } SERCOM_USART_SYNCBUSY_Type;
typedef union { uint32_t reg; } SERCOM_USART_ADDR_Type;
typedef union { uint16_t reg; } SERCOM_USART_DATA_Type;
typedef struct {
    volatile SERCOM_USART_CTRLA_Type CTRLA;
    volatile SERCOM_USART_CTRLB_Type CTRLB;
    uint8_t RESERVED0[4];
    volatile SERCOM_USART_BAUD_Type BAUD;
    uint8_t RESERVED1[6];
    volatile SERCOM_USART_INTENCLR_Type INTENCLR;
    uint8_t RESERVED2[1];
    volatile SERCOM_USART_INTENSET_Type INTENSET;
    uint8_t RESERVED3[1];
    volatile SERCOM_USART_INTFLAG_Type INTFLAG;
    uint8_t RESERVED4[1];
    volatile SERCOM_USART_STATUS_Type STATUS;
    volatile SERCOM_USART_SYNCBUSY_Type SYNCBUSY;
    uint8_t RESERVED5[4];
    volatile SERCOM_USART_ADDR_Type ADDR;
    volatile SERCOM_USART_DATA_Type DATA;
} SercomUsart;

typedef union {
    SercomUsart USART;
} Sercom;

typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t MODE : 2; uint32_t PRESCSYNC : 2; uint32_t RUNSTDBY : 1; uint32_t ONDEMAND : 1; uint32_t PRESCALER : 3; uint32_t ALOCK : 1; uint32_t : 4; uint32_t CAPTEN0 : 1; uint32_t CAPTEN1 : 1; uint32_t : 2; uint32_t COPEN0 : 1; uint32_t COPEN1 : 1; uint32_t : 10; } bit; uint32_t reg; } TC_CTRLA_Type;
typedef union { uint8_t reg; } TC_CTRLBCLR_Type;
typedef union { struct { uint8_t DIR : 1; uint8_t LUPD : 1; uint8_t ONESHOT : 1; uint8_t : 2; uint8_t CMD : 3; } bit; uint8_t reg; } TC_CTRLBSET_Type;
typedef union { struct { uint16_t EVACT : 3; uint16_t : 1; uint16_t TCINV : 1; uint16_t TCEI : 1; uint16_t : 2; uint16_t OVFEO : 1; uint16_t : 3; uint16_t MCEO0 : 1; uint16_t MCEO1 : 1; uint16_t : 2; } bit; uint16_t reg; } TC_EVCTRL_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 2; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_INTENCLR_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 2; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_INTENSET_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 2; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_INTFLAG_Type;
typedef union { uint8_t reg; } TC_STATUS_Type;
typedef union { struct { uint8_t WAVEGEN : 2; uint8_t : 6; } bit; uint8_t reg; } TC_WAVE_Type;
typedef union { uint8_t reg; } TC_DRVCTRL_Type;
typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t : 30; } bit; uint32_t reg; } TC_SYNCBUSY_Type;
typedef union { uint32_t reg; } TC_COUNT_Type;
typedef union { uint16_t reg; } TC_CC_Type;
typedef struct {
    volatile TC_CTRLA_Type CTRLA;
    volatile TC_CTRLBCLR_Type CTRLBCLR;
    volatile TC_CTRLBSET_Type CTRLBSET;
    volatile TC_EVCTRL_Type EVCTRL;
    volatile TC_INTENCLR_Type INTENCLR;
    volatile TC_INTENSET_Type INTENSET;
    volatile TC_INTFLAG_Type INTFLAG;
    volatile TC_STATUS_Type STATUS;
    volatile TC_WAVE_Type WAVE;
    volatile TC_DRVCTRL_Type DRVCTRL;
    uint8_t RESERVED0[2];
    volatile TC_SYNCBUSY_Type SYNCBUSY;
    volatile TC_COUNT_Type COUNT;
    uint8_t RESERVED1[4];
    volatile TC_CC_Type CC[2];
} TcCount16;

typedef union {
    TcCount16 COUNT16;
} Tc;

#define PM ((Pm *)0x40000400UL)
#define SUPC ((Supc *)0x40001800UL)
#define OSCCTRL ((Oscctrl *)0x40001000UL)
#define OSC32KCTRL ((Osc32kctrl *)0x40001400UL)
#define MCLK ((Mclk *)0x40000800UL)
#define GCLK ((Gclk *)0x40001C00UL)
#define RTC ((Rtc *)0x40002400UL)
#define EIC ((Eic *)0x40002800UL)
#define WDT ((Wdt *)0x40002000UL)
#define PORT ((Port *)0x41006000UL)
#define PORT_IOBUS ((Port *)0x60000000UL)
#define ADC ((Adc *)0x42003000UL)
#define AC ((Ac *)0x42003400UL)
#define TRNG ((Trng *)0x42004400UL)
#define SLCD ((Slcd *)0x42003C00UL)
#define SERCOM0 ((Sercom *)0x42000400UL)
#define SERCOM1 ((Sercom *)0x42000800UL)
#define TC0 ((Tc *)0x42002000UL)
#define TC1 ((Tc *)0x42002400UL)

#define SUPC_VREG_ENABLE (1ul << 1)
#define SUPC_VREG_SEL_Msk (0x3ul << 2)
#define SUPC_VREG_SEL(value) (SUPC_VREG_SEL_Msk & ((uint32_t)(value) << 2))
#define SUPC_VREG_LPEFF (1ul << 8)
#define OSC32KCTRL_RTCCTRL_RTCSEL_Msk (0x7ul << 0)
#define OSC32KCTRL_RTCCTRL_RTCSEL(value) (OSC32KCTRL_RTCCTRL_RTCSEL_Msk & ((uint32_t)(value) << 0))
#define OSC32KCTRL_XOSC32K_ENABLE (1ul << 1)
#define OSC32KCTRL_XOSC32K_XTALEN (1ul << 2)
#define OSC32KCTRL_XOSC32K_EN32K (1ul << 3)
#define OSC32KCTRL_XOSC32K_EN1K (1ul << 4)
#define OSC32KCTRL_XOSC32K_RUNSTDBY (1ul << 6)
#define OSC32KCTRL_XOSC32K_STARTUP_Msk (0x7ul << 8)
#define OSC32KCTRL_XOSC32K_STARTUP(value) (OSC32KCTRL_XOSC32K_STARTUP_Msk & ((uint32_t)(value) << 8))
#define MCLK_AHBMASK_DMAC (1ul << 3)
#define MCLK_AHBMASK_USB (1ul << 4)
#define MCLK_APBAMASK_WDT (1ul << 8)
#define MCLK_APBAMASK_RTC (1ul << 9)
#define MCLK_APBAMASK_EIC (1ul << 10)
#define MCLK_APBBMASK_USB (1ul << 0)
#define MCLK_APBCMASK_SERCOM1 (1ul << 2)
#define MCLK_APBCMASK_PTC (1ul << 14)
#define MCLK_APBCMASK_SLCD (1ul << 15)
#define MCLK_APBCMASK_AES (1ul << 16)
#define GCLK_PCHCTRL_GEN_Msk (0xful << 0)
#define GCLK_PCHCTRL_GEN(value) (GCLK_PCHCTRL_GEN_Msk & ((uint32_t)(value) << 0))
#define GCLK_PCHCTRL_CHEN (1ul << 6)
#define RTC_MODE0_CTRLA_SWRST (1ul << 0)
#define RTC_MODE0_CTRLA_ENABLE (1ul << 1)
#define RTC_MODE0_CTRLA_PRESCALER_Msk (0xful << 8)
#define RTC_MODE0_CTRLA_PRESCALER(value) (RTC_MODE0_CTRLA_PRESCALER_Msk & ((uint32_t)(value) << 8))
#define RTC_MODE0_INTENSET_PER7 (1ul << 7)
#define RTC_MODE0_INTFLAG_PER6 (1ul << 6)
#define RTC_MODE0_INTFLAG_PER7 (1ul << 7)
#define EIC_CTRLA_ENABLE (1ul << 1)
#define EIC_CTRLA_CKSEL (1ul << 4)
#define PORT_WRCONFIG_PINMASK_Msk (0xfffful << 0)
#define PORT_WRCONFIG_PINMASK(value) (PORT_WRCONFIG_PINMASK_Msk & ((uint32_t)(value) << 0))
#define PORT_WRCONFIG_PULLEN (1ul << 18)
#define PORT_WRCONFIG_WRPINCFG (1ul << 30)
#define PORT_WRCONFIG_HWSEL (1ul << 31)
#define PORT_PINCFG_PULLEN (1ul << 2)
#define PORT_PINCFG_INEN (1ul << 1)
#define PORT_PINCFG_PMUXEN (1ul << 0)
#define TRNG_CTRLA_ENABLE (1ul << 1)
#define SLCD_CTRLA_SWRST (1ul << 0)
#define SLCD_CTRLA_ENABLE (1ul << 1)
#define SLCD_CTRLA_DUTY_Msk (0x7ul << 2)
#define SLCD_CTRLA_DUTY(value) (SLCD_CTRLA_DUTY_Msk & ((uint32_t)(value) << 2))
#define SLCD_CTRLA_RUNSTDBY (1ul << 6)
#define SERCOM_USART_CTRLA_ENABLE (1ul << 1)
#define SERCOM_USART_CTRLA_MODE_Msk (0x7ul << 2)
#define SERCOM_USART_CTRLA_MODE(value) (SERCOM_USART_CTRLA_MODE_Msk & ((uint32_t)(value) << 2))
#define SERCOM_USART_CTRLB_TXEN (1ul << 16)
#define SERCOM_USART_INTENSET_TXC (1ul << 1)
#define SERCOM_USART_INTFLAG_TXC (1ul << 1)
#endif

/* The registers of the SAM D21 that the firmware here uses, named as the part's own header names them: a union of the whole
   register and of its bits. Places and names from ATSAMD21J18A.svd in the public collection of CMSIS-SVD files. */
#ifndef SAMD21_H
#define SAMD21_H
#include <stdint.h>

typedef enum {
    PM_IRQn = 0,
    SYSCTRL_IRQn = 1,
    WDT_IRQn = 2,
    RTC_IRQn = 3,
    EIC_IRQn = 4,
    NVMCTRL_IRQn = 5,
    DMAC_IRQn = 6,
    USB_IRQn = 7,
    EVSYS_IRQn = 8,
    SERCOM0_IRQn = 9,
    SERCOM1_IRQn = 10,
    SERCOM2_IRQn = 11,
    SERCOM3_IRQn = 12,
    SERCOM4_IRQn = 13,
    SERCOM5_IRQn = 14,
    TCC0_IRQn = 15,
    TCC1_IRQn = 16,
    TCC2_IRQn = 17,
    TC3_IRQn = 18,
    TC4_IRQn = 19,
    TC5_IRQn = 20,
    TC6_IRQn = 21,
    TC7_IRQn = 22,
    ADC_IRQn = 23,
    AC_IRQn = 24,
    DAC_IRQn = 25
} IRQn_Type;

#include "core_cm.h"

typedef union { uint8_t reg; } PM_CTRL_Type;
typedef union { struct { uint8_t IDLE : 2; uint8_t : 6; } bit; uint8_t reg; } PM_SLEEP_Type;
typedef union { struct { uint8_t CPUDIV : 3; uint8_t : 5; } bit; uint8_t reg; } PM_CPUSEL_Type;
typedef union { struct { uint8_t APBADIV : 3; uint8_t : 5; } bit; uint8_t reg; } PM_APBASEL_Type;
typedef union { struct { uint8_t APBBDIV : 3; uint8_t : 5; } bit; uint8_t reg; } PM_APBBSEL_Type;
typedef union { struct { uint8_t APBCDIV : 3; uint8_t : 5; } bit; uint8_t reg; } PM_APBCSEL_Type;
typedef union { struct { uint32_t HPB0_ : 1; uint32_t HPB1_ : 1; uint32_t HPB2_ : 1; uint32_t DSU_ : 1; uint32_t NVMCTRL_ : 1; uint32_t DMAC_ : 1; uint32_t USB_ : 1; uint32_t : 25; } bit; uint32_t reg; } PM_AHBMASK_Type;
typedef union { struct { uint32_t PAC0_ : 1; uint32_t PM_ : 1; uint32_t SYSCTRL_ : 1; uint32_t GCLK_ : 1; uint32_t WDT_ : 1; uint32_t RTC_ : 1; uint32_t EIC_ : 1; uint32_t : 25; } bit; uint32_t reg; } PM_APBAMASK_Type;
typedef union { struct { uint32_t PAC1_ : 1; uint32_t DSU_ : 1; uint32_t NVMCTRL_ : 1; uint32_t PORT_ : 1; uint32_t DMAC_ : 1; uint32_t USB_ : 1; uint32_t HMATRIX_ : 1; uint32_t : 25; } bit; uint32_t reg; } PM_APBBMASK_Type;
typedef union { struct { uint32_t PAC2_ : 1; uint32_t EVSYS_ : 1; uint32_t SERCOM0_ : 1; uint32_t SERCOM1_ : 1; uint32_t SERCOM2_ : 1; uint32_t SERCOM3_ : 1; uint32_t SERCOM4_ : 1; uint32_t SERCOM5_ : 1; uint32_t TCC0_ : 1; uint32_t TCC1_ : 1; uint32_t TCC2_ : 1; uint32_t TC3_ : 1; uint32_t TC4_ : 1; uint32_t TC5_ : 1; uint32_t TC6_ : 1; uint32_t TC7_ : 1; uint32_t ADC_ : 1; uint32_t AC_ : 1; uint32_t DAC_ : 1; uint32_t PTC_ : 1; uint32_t I2S_ : 1; uint32_t : 11; } bit; uint32_t reg; } PM_APBCMASK_Type;
typedef union { struct { uint8_t CKRDY : 1; uint8_t : 7; } bit; uint8_t reg; } PM_INTENCLR_Type;
typedef union { struct { uint8_t CKRDY : 1; uint8_t : 7; } bit; uint8_t reg; } PM_INTENSET_Type;
typedef union { struct { uint8_t CKRDY : 1; uint8_t : 7; } bit; uint8_t reg; } PM_INTFLAG_Type;
typedef union { struct { uint8_t POR : 1; uint8_t BOD12 : 1; uint8_t BOD33 : 1; uint8_t : 1; uint8_t EXT : 1; uint8_t WDT : 1; uint8_t SYST : 1; uint8_t : 1; } bit; uint8_t reg; } PM_RCAUSE_Type;
typedef struct {
    volatile PM_CTRL_Type CTRL;
    volatile PM_SLEEP_Type SLEEP;
    uint8_t RESERVED0[6];
    volatile PM_CPUSEL_Type CPUSEL;
    volatile PM_APBASEL_Type APBASEL;
    volatile PM_APBBSEL_Type APBBSEL;
    volatile PM_APBCSEL_Type APBCSEL;
    uint8_t RESERVED1[8];
    volatile PM_AHBMASK_Type AHBMASK;
    volatile PM_APBAMASK_Type APBAMASK;
    volatile PM_APBBMASK_Type APBBMASK;
    volatile PM_APBCMASK_Type APBCMASK;
    uint8_t RESERVED2[16];
    volatile PM_INTENCLR_Type INTENCLR;
    volatile PM_INTENSET_Type INTENSET;
    volatile PM_INTFLAG_Type INTFLAG;
    uint8_t RESERVED3[1];
    volatile PM_RCAUSE_Type RCAUSE;
} Pm;

typedef union { struct { uint32_t XOSCRDY : 1; uint32_t XOSC32KRDY : 1; uint32_t OSC32KRDY : 1; uint32_t OSC8MRDY : 1; uint32_t DFLLRDY : 1; uint32_t DFLLOOB : 1; uint32_t DFLLLCKF : 1; uint32_t DFLLLCKC : 1; uint32_t DFLLRCS : 1; uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 3; uint32_t DPLLLCKR : 1; uint32_t DPLLLCKF : 1; uint32_t DPLLLTO : 1; uint32_t : 14; } bit; uint32_t reg; } SYSCTRL_INTENCLR_Type;
typedef union { struct { uint32_t XOSCRDY : 1; uint32_t XOSC32KRDY : 1; uint32_t OSC32KRDY : 1; uint32_t OSC8MRDY : 1; uint32_t DFLLRDY : 1; uint32_t DFLLOOB : 1; uint32_t DFLLLCKF : 1; uint32_t DFLLLCKC : 1; uint32_t DFLLRCS : 1; uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 3; uint32_t DPLLLCKR : 1; uint32_t DPLLLCKF : 1; uint32_t DPLLLTO : 1; uint32_t : 14; } bit; uint32_t reg; } SYSCTRL_INTENSET_Type;
typedef union { struct { uint32_t XOSCRDY : 1; uint32_t XOSC32KRDY : 1; uint32_t OSC32KRDY : 1; uint32_t OSC8MRDY : 1; uint32_t DFLLRDY : 1; uint32_t DFLLOOB : 1; uint32_t DFLLLCKF : 1; uint32_t DFLLLCKC : 1; uint32_t DFLLRCS : 1; uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 3; uint32_t DPLLLCKR : 1; uint32_t DPLLLCKF : 1; uint32_t DPLLLTO : 1; uint32_t : 14; } bit; uint32_t reg; } SYSCTRL_INTFLAG_Type;
typedef union { struct { uint32_t XOSCRDY : 1; uint32_t XOSC32KRDY : 1; uint32_t OSC32KRDY : 1; uint32_t OSC8MRDY : 1; uint32_t DFLLRDY : 1; uint32_t DFLLOOB : 1; uint32_t DFLLLCKF : 1; uint32_t DFLLLCKC : 1; uint32_t DFLLRCS : 1; uint32_t BOD33RDY : 1; uint32_t BOD33DET : 1; uint32_t B33SRDY : 1; uint32_t : 3; uint32_t DPLLLCKR : 1; uint32_t DPLLLCKF : 1; uint32_t DPLLLTO : 1; uint32_t : 14; } bit; uint32_t reg; } SYSCTRL_PCLKSR_Type;
typedef union { struct { uint16_t : 1; uint16_t ENABLE : 1; uint16_t XTALEN : 1; uint16_t : 3; uint16_t RUNSTDBY : 1; uint16_t ONDEMAND : 1; uint16_t GAIN : 3; uint16_t AMPGC : 1; uint16_t STARTUP : 4; } bit; uint16_t reg; } SYSCTRL_XOSC_Type;
typedef union { struct { uint16_t : 1; uint16_t ENABLE : 1; uint16_t XTALEN : 1; uint16_t EN32K : 1; uint16_t EN1K : 1; uint16_t AAMPEN : 1; uint16_t RUNSTDBY : 1; uint16_t ONDEMAND : 1; uint16_t STARTUP : 3; uint16_t : 1; uint16_t WRTLOCK : 1; uint16_t : 3; } bit; uint16_t reg; } SYSCTRL_XOSC32K_Type;
typedef union { struct { uint32_t : 1; uint32_t ENABLE : 1; uint32_t EN32K : 1; uint32_t EN1K : 1; uint32_t : 2; uint32_t RUNSTDBY : 1; uint32_t ONDEMAND : 1; uint32_t STARTUP : 3; uint32_t : 1; uint32_t WRTLOCK : 1; uint32_t : 3; uint32_t CALIB : 7; uint32_t : 9; } bit; uint32_t reg; } SYSCTRL_OSC32K_Type;
typedef union { struct { uint8_t CALIB : 5; uint8_t : 2; uint8_t WRTLOCK : 1; } bit; uint8_t reg; } SYSCTRL_OSCULP32K_Type;
typedef union { struct { uint32_t : 1; uint32_t ENABLE : 1; uint32_t : 4; uint32_t RUNSTDBY : 1; uint32_t ONDEMAND : 1; uint32_t PRESC : 2; uint32_t : 6; uint32_t CALIB : 12; uint32_t : 2; uint32_t FRANGE : 2; } bit; uint32_t reg; } SYSCTRL_OSC8M_Type;
typedef union { struct { uint16_t : 1; uint16_t ENABLE : 1; uint16_t MODE : 1; uint16_t STABLE : 1; uint16_t LLAW : 1; uint16_t USBCRM : 1; uint16_t RUNSTDBY : 1; uint16_t ONDEMAND : 1; uint16_t CCDIS : 1; uint16_t QLDIS : 1; uint16_t BPLCKC : 1; uint16_t WAITLOCK : 1; uint16_t : 4; } bit; uint16_t reg; } SYSCTRL_DFLLCTRL_Type;
typedef union { struct { uint32_t FINE : 10; uint32_t COARSE : 6; uint32_t DIFF : 16; } bit; uint32_t reg; } SYSCTRL_DFLLVAL_Type;
typedef union { struct { uint32_t MUL : 16; uint32_t FSTEP : 10; uint32_t CSTEP : 6; } bit; uint32_t reg; } SYSCTRL_DFLLMUL_Type;
typedef union { struct { uint32_t : 1; uint32_t ENABLE : 1; uint32_t HYST : 1; uint32_t ACTION : 2; uint32_t : 1; uint32_t RUNSTDBY : 1; uint32_t : 1; uint32_t MODE : 1; uint32_t CEN : 1; uint32_t : 2; uint32_t PSEL : 4; uint32_t LEVEL : 6; uint32_t : 10; } bit; uint32_t reg; } SYSCTRL_BOD33_Type;
typedef union { struct { uint16_t : 6; uint16_t RUNSTDBY : 1; uint16_t : 6; uint16_t FORCELDO : 1; uint16_t : 2; } bit; uint16_t reg; } SYSCTRL_VREG_Type;
typedef union { struct { uint32_t : 1; uint32_t TSEN : 1; uint32_t BGOUTEN : 1; uint32_t : 13; uint32_t CALIB : 11; uint32_t : 5; } bit; uint32_t reg; } SYSCTRL_VREF_Type;
typedef union { struct { uint8_t : 1; uint8_t ENABLE : 1; uint8_t : 4; uint8_t RUNSTDBY : 1; uint8_t ONDEMAND : 1; } bit; uint8_t reg; } SYSCTRL_DPLLCTRLA_Type;
typedef union { struct { uint32_t LDR : 12; uint32_t : 4; uint32_t LDRFRAC : 4; uint32_t : 12; } bit; uint32_t reg; } SYSCTRL_DPLLRATIO_Type;
typedef union { struct { uint32_t FILTER : 2; uint32_t LPEN : 1; uint32_t WUF : 1; uint32_t REFCLK : 2; uint32_t : 2; uint32_t LTIME : 3; uint32_t : 1; uint32_t LBYPASS : 1; uint32_t : 3; uint32_t DIV : 11; uint32_t : 5; } bit; uint32_t reg; } SYSCTRL_DPLLCTRLB_Type;
typedef union { struct { uint8_t LOCK : 1; uint8_t CLKRDY : 1; uint8_t ENABLE : 1; uint8_t DIV : 1; uint8_t : 4; } bit; uint8_t reg; } SYSCTRL_DPLLSTATUS_Type;
typedef struct {
    volatile SYSCTRL_INTENCLR_Type INTENCLR;
    volatile SYSCTRL_INTENSET_Type INTENSET;
    volatile SYSCTRL_INTFLAG_Type INTFLAG;
    volatile SYSCTRL_PCLKSR_Type PCLKSR;
    volatile SYSCTRL_XOSC_Type XOSC;
    uint8_t RESERVED0[2];
    volatile SYSCTRL_XOSC32K_Type XOSC32K;
    uint8_t RESERVED1[2];
    volatile SYSCTRL_OSC32K_Type OSC32K;
    volatile SYSCTRL_OSCULP32K_Type OSCULP32K;
    uint8_t RESERVED2[3];
    volatile SYSCTRL_OSC8M_Type OSC8M;
    volatile SYSCTRL_DFLLCTRL_Type DFLLCTRL;
    uint8_t RESERVED3[2];
    volatile SYSCTRL_DFLLVAL_Type DFLLVAL;
    volatile SYSCTRL_DFLLMUL_Type DFLLMUL;
    uint8_t RESERVED4[4];
    volatile SYSCTRL_BOD33_Type BOD33;
    uint8_t RESERVED5[4];
    volatile SYSCTRL_VREG_Type VREG;
    uint8_t RESERVED6[2];
    volatile SYSCTRL_VREF_Type VREF;
    volatile SYSCTRL_DPLLCTRLA_Type DPLLCTRLA;
    uint8_t RESERVED7[3];
    volatile SYSCTRL_DPLLRATIO_Type DPLLRATIO;
    volatile SYSCTRL_DPLLCTRLB_Type DPLLCTRLB;
    volatile SYSCTRL_DPLLSTATUS_Type DPLLSTATUS;
} Sysctrl;

typedef union { struct { uint8_t SWRST : 1; uint8_t : 7; } bit; uint8_t reg; } GCLK_CTRL_Type;
typedef union { struct { uint8_t : 7; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } GCLK_STATUS_Type;
typedef union { struct { uint16_t ID : 6; uint16_t : 2; uint16_t GEN : 4; uint16_t : 2; uint16_t CLKEN : 1; uint16_t WRTLOCK : 1; } bit; uint16_t reg; } GCLK_CLKCTRL_Type;
typedef union { struct { uint32_t ID : 4; uint32_t : 4; uint32_t SRC : 5; uint32_t : 3; uint32_t GENEN : 1; uint32_t IDC : 1; uint32_t OOV : 1; uint32_t OE : 1; uint32_t DIVSEL : 1; uint32_t RUNSTDBY : 1; uint32_t : 10; } bit; uint32_t reg; } GCLK_GENCTRL_Type;
typedef union { struct { uint32_t ID : 4; uint32_t : 4; uint32_t DIV : 16; uint32_t : 8; } bit; uint32_t reg; } GCLK_GENDIV_Type;
typedef struct {
    volatile GCLK_CTRL_Type CTRL;
    volatile GCLK_STATUS_Type STATUS;
    volatile GCLK_CLKCTRL_Type CLKCTRL;
    volatile GCLK_GENCTRL_Type GENCTRL;
    volatile GCLK_GENDIV_Type GENDIV;
} Gclk;

typedef union { struct { uint8_t SWRST : 1; uint8_t ENABLE : 1; uint8_t : 6; } bit; uint8_t reg; } EIC_CTRL_Type;
typedef union { struct { uint8_t : 7; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } EIC_STATUS_Type;
typedef union { struct { uint8_t NMISENSE : 3; uint8_t NMIFILTEN : 1; uint8_t : 4; } bit; uint8_t reg; } EIC_NMICTRL_Type;
typedef union { struct { uint8_t NMI : 1; uint8_t : 7; } bit; uint8_t reg; } EIC_NMIFLAG_Type;
typedef union { struct { uint32_t EXTINTEO0 : 1; uint32_t EXTINTEO1 : 1; uint32_t EXTINTEO2 : 1; uint32_t EXTINTEO3 : 1; uint32_t EXTINTEO4 : 1; uint32_t EXTINTEO5 : 1; uint32_t EXTINTEO6 : 1; uint32_t EXTINTEO7 : 1; uint32_t EXTINTEO8 : 1; uint32_t EXTINTEO9 : 1; uint32_t EXTINTEO10 : 1; uint32_t EXTINTEO11 : 1; uint32_t EXTINTEO12 : 1; uint32_t EXTINTEO13 : 1; uint32_t EXTINTEO14 : 1; uint32_t EXTINTEO15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_EVCTRL_Type;
typedef union { struct { uint32_t EXTINT0 : 1; uint32_t EXTINT1 : 1; uint32_t EXTINT2 : 1; uint32_t EXTINT3 : 1; uint32_t EXTINT4 : 1; uint32_t EXTINT5 : 1; uint32_t EXTINT6 : 1; uint32_t EXTINT7 : 1; uint32_t EXTINT8 : 1; uint32_t EXTINT9 : 1; uint32_t EXTINT10 : 1; uint32_t EXTINT11 : 1; uint32_t EXTINT12 : 1; uint32_t EXTINT13 : 1; uint32_t EXTINT14 : 1; uint32_t EXTINT15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_INTENCLR_Type;
typedef union { struct { uint32_t EXTINT0 : 1; uint32_t EXTINT1 : 1; uint32_t EXTINT2 : 1; uint32_t EXTINT3 : 1; uint32_t EXTINT4 : 1; uint32_t EXTINT5 : 1; uint32_t EXTINT6 : 1; uint32_t EXTINT7 : 1; uint32_t EXTINT8 : 1; uint32_t EXTINT9 : 1; uint32_t EXTINT10 : 1; uint32_t EXTINT11 : 1; uint32_t EXTINT12 : 1; uint32_t EXTINT13 : 1; uint32_t EXTINT14 : 1; uint32_t EXTINT15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_INTENSET_Type;
typedef union { struct { uint32_t EXTINT0 : 1; uint32_t EXTINT1 : 1; uint32_t EXTINT2 : 1; uint32_t EXTINT3 : 1; uint32_t EXTINT4 : 1; uint32_t EXTINT5 : 1; uint32_t EXTINT6 : 1; uint32_t EXTINT7 : 1; uint32_t EXTINT8 : 1; uint32_t EXTINT9 : 1; uint32_t EXTINT10 : 1; uint32_t EXTINT11 : 1; uint32_t EXTINT12 : 1; uint32_t EXTINT13 : 1; uint32_t EXTINT14 : 1; uint32_t EXTINT15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_INTFLAG_Type;
typedef union { struct { uint32_t WAKEUPEN0 : 1; uint32_t WAKEUPEN1 : 1; uint32_t WAKEUPEN2 : 1; uint32_t WAKEUPEN3 : 1; uint32_t WAKEUPEN4 : 1; uint32_t WAKEUPEN5 : 1; uint32_t WAKEUPEN6 : 1; uint32_t WAKEUPEN7 : 1; uint32_t WAKEUPEN8 : 1; uint32_t WAKEUPEN9 : 1; uint32_t WAKEUPEN10 : 1; uint32_t WAKEUPEN11 : 1; uint32_t WAKEUPEN12 : 1; uint32_t WAKEUPEN13 : 1; uint32_t WAKEUPEN14 : 1; uint32_t WAKEUPEN15 : 1; uint32_t : 16; } bit; uint32_t reg; } EIC_WAKEUP_Type;
typedef union { struct { uint32_t SENSE0 : 3; uint32_t FILTEN0 : 1; uint32_t SENSE1 : 3; uint32_t FILTEN1 : 1; uint32_t SENSE2 : 3; uint32_t FILTEN2 : 1; uint32_t SENSE3 : 3; uint32_t FILTEN3 : 1; uint32_t SENSE4 : 3; uint32_t FILTEN4 : 1; uint32_t SENSE5 : 3; uint32_t FILTEN5 : 1; uint32_t SENSE6 : 3; uint32_t FILTEN6 : 1; uint32_t SENSE7 : 3; uint32_t FILTEN7 : 1; } bit; uint32_t reg; } EIC_CONFIG_Type;
typedef struct {
    volatile EIC_CTRL_Type CTRL;
    volatile EIC_STATUS_Type STATUS;
    volatile EIC_NMICTRL_Type NMICTRL;
    volatile EIC_NMIFLAG_Type NMIFLAG;
    volatile EIC_EVCTRL_Type EVCTRL;
    volatile EIC_INTENCLR_Type INTENCLR;
    volatile EIC_INTENSET_Type INTENSET;
    volatile EIC_INTFLAG_Type INTFLAG;
    volatile EIC_WAKEUP_Type WAKEUP;
    volatile EIC_CONFIG_Type CONFIG[2];
} Eic;

typedef union { struct { uint8_t SWRST : 1; uint8_t ENABLE : 1; uint8_t RUNSTDBY : 1; uint8_t : 5; } bit; uint8_t reg; } ADC_CTRLA_Type;
typedef union { struct { uint8_t REFSEL : 4; uint8_t : 3; uint8_t REFCOMP : 1; } bit; uint8_t reg; } ADC_REFCTRL_Type;
typedef union { struct { uint8_t SAMPLENUM : 4; uint8_t ADJRES : 3; uint8_t : 1; } bit; uint8_t reg; } ADC_AVGCTRL_Type;
typedef union { struct { uint8_t SAMPLEN : 6; uint8_t : 2; } bit; uint8_t reg; } ADC_SAMPCTRL_Type;
typedef union { struct { uint16_t DIFFMODE : 1; uint16_t LEFTADJ : 1; uint16_t FREERUN : 1; uint16_t CORREN : 1; uint16_t RESSEL : 2; uint16_t : 2; uint16_t PRESCALER : 3; uint16_t : 5; } bit; uint16_t reg; } ADC_CTRLB_Type;
typedef union { struct { uint8_t WINMODE : 3; uint8_t : 5; } bit; uint8_t reg; } ADC_WINCTRL_Type;
typedef union { struct { uint8_t FLUSH : 1; uint8_t START : 1; uint8_t : 6; } bit; uint8_t reg; } ADC_SWTRIG_Type;
typedef union { struct { uint32_t MUXPOS : 5; uint32_t : 3; uint32_t MUXNEG : 5; uint32_t : 3; uint32_t INPUTSCAN : 4; uint32_t INPUTOFFSET : 4; uint32_t GAIN : 4; uint32_t : 4; } bit; uint32_t reg; } ADC_INPUTCTRL_Type;
typedef union { struct { uint8_t STARTEI : 1; uint8_t SYNCEI : 1; uint8_t : 2; uint8_t RESRDYEO : 1; uint8_t WINMONEO : 1; uint8_t : 2; } bit; uint8_t reg; } ADC_EVCTRL_Type;
typedef union { struct { uint8_t RESRDY : 1; uint8_t OVERRUN : 1; uint8_t WINMON : 1; uint8_t SYNCRDY : 1; uint8_t : 4; } bit; uint8_t reg; } ADC_INTENCLR_Type;
typedef union { struct { uint8_t RESRDY : 1; uint8_t OVERRUN : 1; uint8_t WINMON : 1; uint8_t SYNCRDY : 1; uint8_t : 4; } bit; uint8_t reg; } ADC_INTENSET_Type;
typedef union { struct { uint8_t RESRDY : 1; uint8_t OVERRUN : 1; uint8_t WINMON : 1; uint8_t SYNCRDY : 1; uint8_t : 4; } bit; uint8_t reg; } ADC_INTFLAG_Type;
typedef union { struct { uint8_t : 7; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } ADC_STATUS_Type;
typedef union { struct { uint16_t RESULT : 16; } bit; uint16_t reg; } ADC_RESULT_Type;
typedef union { struct { uint16_t LINEARITY_CAL : 8; uint16_t BIAS_CAL : 3; uint16_t : 5; } bit; uint16_t reg; } ADC_CALIB_Type;
typedef struct {
    volatile ADC_CTRLA_Type CTRLA;
    volatile ADC_REFCTRL_Type REFCTRL;
    volatile ADC_AVGCTRL_Type AVGCTRL;
    volatile ADC_SAMPCTRL_Type SAMPCTRL;
    volatile ADC_CTRLB_Type CTRLB;
    uint8_t RESERVED0[2];
    volatile ADC_WINCTRL_Type WINCTRL;
    uint8_t RESERVED1[3];
    volatile ADC_SWTRIG_Type SWTRIG;
    uint8_t RESERVED2[3];
    volatile ADC_INPUTCTRL_Type INPUTCTRL;
    volatile ADC_EVCTRL_Type EVCTRL;
    uint8_t RESERVED3[1];
    volatile ADC_INTENCLR_Type INTENCLR;
    volatile ADC_INTENSET_Type INTENSET;
    volatile ADC_INTFLAG_Type INTFLAG;
    volatile ADC_STATUS_Type STATUS;
    volatile ADC_RESULT_Type RESULT;
    uint8_t RESERVED4[12];
    volatile ADC_CALIB_Type CALIB;
} Adc;

typedef union { struct { uint32_t : 1; uint32_t WP : 31; } bit; uint32_t reg; } PAC_WPCLR_Type;
typedef union { struct { uint32_t : 1; uint32_t WP : 31; } bit; uint32_t reg; } PAC_WPSET_Type;
typedef struct {
    volatile PAC_WPCLR_Type WPCLR;
    volatile PAC_WPSET_Type WPSET;
} Pac;

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
    uint8_t RESERVED_END[32];
} PortGroup;

typedef struct {
    PortGroup Group[2];
} Port;

typedef union { struct { uint16_t SWRST : 1; uint16_t ENABLE : 1; uint16_t MODE : 2; uint16_t : 3; uint16_t MATCHCLR : 1; uint16_t PRESCALER : 4; uint16_t : 4; } bit; uint16_t reg; } RTC_MODE0_CTRL_Type;
typedef union { struct { uint16_t ADDR : 6; uint16_t : 8; uint16_t RCONT : 1; uint16_t RREQ : 1; } bit; uint16_t reg; } RTC_MODE0_READREQ_Type;
typedef union { struct { uint16_t PEREO0 : 1; uint16_t PEREO1 : 1; uint16_t PEREO2 : 1; uint16_t PEREO3 : 1; uint16_t PEREO4 : 1; uint16_t PEREO5 : 1; uint16_t PEREO6 : 1; uint16_t PEREO7 : 1; uint16_t CMPEO0 : 1; uint16_t : 6; uint16_t OVFEO : 1; } bit; uint16_t reg; } RTC_MODE0_EVCTRL_Type;
typedef union { struct { uint8_t CMP0 : 1; uint8_t : 5; uint8_t SYNCRDY : 1; uint8_t OVF : 1; } bit; uint8_t reg; } RTC_MODE0_INTENCLR_Type;
typedef union { struct { uint8_t CMP0 : 1; uint8_t : 5; uint8_t SYNCRDY : 1; uint8_t OVF : 1; } bit; uint8_t reg; } RTC_MODE0_INTENSET_Type;
typedef union { struct { uint8_t CMP0 : 1; uint8_t : 5; uint8_t SYNCRDY : 1; uint8_t OVF : 1; } bit; uint8_t reg; } RTC_MODE0_INTFLAG_Type;
typedef union { struct { uint8_t : 7; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } RTC_MODE0_STATUS_Type;
typedef union { struct { uint32_t COUNT : 32; } bit; uint32_t reg; } RTC_MODE0_COUNT_Type;
typedef union { struct { uint32_t COMP : 32; } bit; uint32_t reg; } RTC_MODE0_COMP_Type;
typedef struct {
    volatile RTC_MODE0_CTRL_Type CTRL;
    volatile RTC_MODE0_READREQ_Type READREQ;
    volatile RTC_MODE0_EVCTRL_Type EVCTRL;
    volatile RTC_MODE0_INTENCLR_Type INTENCLR;
    volatile RTC_MODE0_INTENSET_Type INTENSET;
    volatile RTC_MODE0_INTFLAG_Type INTFLAG;
    uint8_t RESERVED0[1];
    volatile RTC_MODE0_STATUS_Type STATUS;
    uint8_t RESERVED1[5];
    volatile RTC_MODE0_COUNT_Type COUNT;
    uint8_t RESERVED2[4];
    volatile RTC_MODE0_COMP_Type COMP[1];
} RtcMode0;

typedef union { struct { uint16_t SWRST : 1; uint16_t ENABLE : 1; uint16_t MODE : 2; uint16_t : 2; uint16_t CLKREP : 1; uint16_t MATCHCLR : 1; uint16_t PRESCALER : 4; uint16_t : 4; } bit; uint16_t reg; } RTC_MODE2_CTRL_Type;
typedef union { struct { uint16_t ADDR : 6; uint16_t : 8; uint16_t RCONT : 1; uint16_t RREQ : 1; } bit; uint16_t reg; } RTC_MODE2_READREQ_Type;
typedef union { struct { uint16_t PEREO0 : 1; uint16_t PEREO1 : 1; uint16_t PEREO2 : 1; uint16_t PEREO3 : 1; uint16_t PEREO4 : 1; uint16_t PEREO5 : 1; uint16_t PEREO6 : 1; uint16_t PEREO7 : 1; uint16_t ALARMEO0 : 1; uint16_t : 6; uint16_t OVFEO : 1; } bit; uint16_t reg; } RTC_MODE2_EVCTRL_Type;
typedef union { struct { uint8_t ALARM0 : 1; uint8_t : 5; uint8_t SYNCRDY : 1; uint8_t OVF : 1; } bit; uint8_t reg; } RTC_MODE2_INTENCLR_Type;
typedef union { struct { uint8_t ALARM0 : 1; uint8_t : 5; uint8_t SYNCRDY : 1; uint8_t OVF : 1; } bit; uint8_t reg; } RTC_MODE2_INTENSET_Type;
typedef union { struct { uint8_t ALARM0 : 1; uint8_t : 5; uint8_t SYNCRDY : 1; uint8_t OVF : 1; } bit; uint8_t reg; } RTC_MODE2_INTFLAG_Type;
typedef union { struct { uint8_t : 7; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } RTC_MODE2_STATUS_Type;
typedef union { struct { uint32_t SECOND : 6; uint32_t MINUTE : 6; uint32_t HOUR : 5; uint32_t DAY : 5; uint32_t MONTH : 4; uint32_t YEAR : 6; } bit; uint32_t reg; } RTC_MODE2_CLOCK_Type;
typedef union { struct { uint32_t SECOND : 6; uint32_t MINUTE : 6; uint32_t HOUR : 5; uint32_t DAY : 5; uint32_t MONTH : 4; uint32_t YEAR : 6; } bit; uint32_t reg; } RTC_MODE2_ALARM_Type;
typedef union { struct { uint8_t SEL : 3; uint8_t : 5; } bit; uint8_t reg; } RTC_MODE2_MASK_Type;
typedef struct {
    volatile RTC_MODE2_CTRL_Type CTRL;
    volatile RTC_MODE2_READREQ_Type READREQ;
    volatile RTC_MODE2_EVCTRL_Type EVCTRL;
    volatile RTC_MODE2_INTENCLR_Type INTENCLR;
    volatile RTC_MODE2_INTENSET_Type INTENSET;
    volatile RTC_MODE2_INTFLAG_Type INTFLAG;
    uint8_t RESERVED0[1];
    volatile RTC_MODE2_STATUS_Type STATUS;
    uint8_t RESERVED1[5];
    volatile RTC_MODE2_CLOCK_Type CLOCK;
    uint8_t RESERVED2[4];
    volatile RTC_MODE2_ALARM_Type ALARM[1];
    volatile RTC_MODE2_MASK_Type MASK[1];
} RtcMode2;

typedef union {
    RtcMode0 MODE0;
    RtcMode2 MODE2;
} Rtc;

typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t MODE : 3; uint32_t : 2; uint32_t RUNSTDBY : 1; uint32_t : 8; uint32_t PINOUT : 1; uint32_t : 3; uint32_t SDAHOLD : 2; uint32_t : 1; uint32_t SEXTTOEN : 1; uint32_t SPEED : 2; uint32_t : 1; uint32_t SCLSM : 1; uint32_t : 2; uint32_t LOWTOUTEN : 1; uint32_t : 1; } bit; uint32_t reg; } SERCOM_I2CS_CTRLA_Type;
typedef union { struct { uint32_t : 8; uint32_t SMEN : 1; uint32_t GCMD : 1; uint32_t AACKEN : 1; uint32_t : 3; uint32_t AMODE : 2; uint32_t CMD : 2; uint32_t ACKACT : 1; uint32_t : 13; } bit; uint32_t reg; } SERCOM_I2CS_CTRLB_Type;
typedef union { struct { uint8_t PREC : 1; uint8_t AMATCH : 1; uint8_t DRDY : 1; uint8_t : 4; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_I2CS_INTENCLR_Type;
typedef union { struct { uint8_t PREC : 1; uint8_t AMATCH : 1; uint8_t DRDY : 1; uint8_t : 4; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_I2CS_INTENSET_Type;
typedef union { struct { uint8_t PREC : 1; uint8_t AMATCH : 1; uint8_t DRDY : 1; uint8_t : 4; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_I2CS_INTFLAG_Type;
typedef union { struct { uint16_t BUSERR : 1; uint16_t COLL : 1; uint16_t RXNACK : 1; uint16_t DIR : 1; uint16_t SR : 1; uint16_t : 1; uint16_t LOWTOUT : 1; uint16_t CLKHOLD : 1; uint16_t : 1; uint16_t SEXTTOUT : 1; uint16_t HS : 1; uint16_t : 5; } bit; uint16_t reg; } SERCOM_I2CS_STATUS_Type;
typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t : 30; } bit; uint32_t reg; } SERCOM_I2CS_SYNCBUSY_Type;
typedef union { struct { uint32_t GENCEN : 1; uint32_t ADDR : 10; uint32_t : 4; uint32_t TENBITEN : 1; uint32_t : 1; uint32_t ADDRMASK : 10; uint32_t : 5; } bit; uint32_t reg; } SERCOM_I2CS_ADDR_Type;
typedef union { struct { uint8_t DATA : 8; } bit; uint8_t reg; } SERCOM_I2CS_DATA_Type;
typedef struct {
    volatile SERCOM_I2CS_CTRLA_Type CTRLA;
    volatile SERCOM_I2CS_CTRLB_Type CTRLB;
    uint8_t RESERVED0[12];
    volatile SERCOM_I2CS_INTENCLR_Type INTENCLR;
    uint8_t RESERVED1[1];
    volatile SERCOM_I2CS_INTENSET_Type INTENSET;
    uint8_t RESERVED2[1];
    volatile SERCOM_I2CS_INTFLAG_Type INTFLAG;
    uint8_t RESERVED3[1];
    volatile SERCOM_I2CS_STATUS_Type STATUS;
    volatile SERCOM_I2CS_SYNCBUSY_Type SYNCBUSY;
    uint8_t RESERVED4[4];
    volatile SERCOM_I2CS_ADDR_Type ADDR;
    volatile SERCOM_I2CS_DATA_Type DATA;
} SercomI2cs;

typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t MODE : 3; uint32_t : 2; uint32_t RUNSTDBY : 1; uint32_t IBON : 1; uint32_t : 4; uint32_t SAMPR : 3; uint32_t TXPO : 2; uint32_t : 2; uint32_t RXPO : 2; uint32_t SAMPA : 2; uint32_t FORM : 4; uint32_t CMODE : 1; uint32_t CPOL : 1; uint32_t DORD : 1; uint32_t : 1; } bit; uint32_t reg; } SERCOM_USART_CTRLA_Type;
typedef union { struct { uint32_t CHSIZE : 3; uint32_t : 3; uint32_t SBMODE : 1; uint32_t : 1; uint32_t COLDEN : 1; uint32_t SFDE : 1; uint32_t ENC : 1; uint32_t : 2; uint32_t PMODE : 1; uint32_t : 2; uint32_t TXEN : 1; uint32_t RXEN : 1; uint32_t : 14; } bit; uint32_t reg; } SERCOM_USART_CTRLB_Type;
typedef union { struct { uint16_t BAUD : 16; } bit; uint16_t reg; } SERCOM_USART_BAUD_Type;
typedef union { struct { uint8_t DRE : 1; uint8_t TXC : 1; uint8_t RXC : 1; uint8_t RXS : 1; uint8_t CTSIC : 1; uint8_t RXBRK : 1; uint8_t : 1; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_USART_INTENCLR_Type;
typedef union { struct { uint8_t DRE : 1; uint8_t TXC : 1; uint8_t RXC : 1; uint8_t RXS : 1; uint8_t CTSIC : 1; uint8_t RXBRK : 1; uint8_t : 1; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_USART_INTENSET_Type;
typedef union { struct { uint8_t DRE : 1; uint8_t TXC : 1; uint8_t RXC : 1; uint8_t RXS : 1; uint8_t CTSIC : 1; uint8_t RXBRK : 1; uint8_t : 1; uint8_t ERROR : 1; } bit; uint8_t reg; } SERCOM_USART_INTFLAG_Type;
typedef union { struct { uint16_t PERR : 1; uint16_t FERR : 1; uint16_t BUFOVF : 1; uint16_t CTS : 1; uint16_t ISF : 1; uint16_t COLL : 1; uint16_t : 10; } bit; uint16_t reg; } SERCOM_USART_STATUS_Type;
typedef union { struct { uint32_t SWRST : 1; uint32_t ENABLE : 1; uint32_t CTRLB : 1; uint32_t : 29; } bit; uint32_t reg; } SERCOM_USART_SYNCBUSY_Type;
typedef union { struct { uint16_t DATA : 9; uint16_t : 7; } bit; uint16_t reg; } SERCOM_USART_DATA_Type;
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
    uint8_t RESERVED5[8];
    volatile SERCOM_USART_DATA_Type DATA;
} SercomUsart;

typedef union {
    SercomI2cs I2CS;
    SercomUsart USART;
} Sercom;

typedef union { struct { uint16_t SWRST : 1; uint16_t ENABLE : 1; uint16_t MODE : 2; uint16_t : 1; uint16_t WAVEGEN : 2; uint16_t : 1; uint16_t PRESCALER : 3; uint16_t RUNSTDBY : 1; uint16_t PRESCSYNC : 2; uint16_t : 2; } bit; uint16_t reg; } TC_COUNT8_CTRLA_Type;
typedef union { struct { uint16_t ADDR : 5; uint16_t : 9; uint16_t RCONT : 1; uint16_t RREQ : 1; } bit; uint16_t reg; } TC_COUNT8_READREQ_Type;
typedef union { struct { uint8_t DIR : 1; uint8_t : 1; uint8_t ONESHOT : 1; uint8_t : 3; uint8_t CMD : 2; } bit; uint8_t reg; } TC_COUNT8_CTRLBCLR_Type;
typedef union { struct { uint8_t DIR : 1; uint8_t : 1; uint8_t ONESHOT : 1; uint8_t : 3; uint8_t CMD : 2; } bit; uint8_t reg; } TC_COUNT8_CTRLBSET_Type;
typedef union { struct { uint8_t INVEN0 : 1; uint8_t INVEN1 : 1; uint8_t : 2; uint8_t CPTEN0 : 1; uint8_t CPTEN1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT8_CTRLC_Type;
typedef union { struct { uint16_t EVACT : 3; uint16_t : 1; uint16_t TCINV : 1; uint16_t TCEI : 1; uint16_t : 2; uint16_t OVFEO : 1; uint16_t : 3; uint16_t MCEO0 : 1; uint16_t MCEO1 : 1; uint16_t : 2; } bit; uint16_t reg; } TC_COUNT8_EVCTRL_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 1; uint8_t SYNCRDY : 1; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT8_INTENCLR_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 1; uint8_t SYNCRDY : 1; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT8_INTENSET_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 1; uint8_t SYNCRDY : 1; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT8_INTFLAG_Type;
typedef union { struct { uint8_t : 3; uint8_t STOP : 1; uint8_t SLAVE : 1; uint8_t : 2; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } TC_COUNT8_STATUS_Type;
typedef union { struct { uint8_t COUNT : 8; } bit; uint8_t reg; } TC_COUNT8_COUNT_Type;
typedef union { struct { uint8_t PER : 8; } bit; uint8_t reg; } TC_COUNT8_PER_Type;
typedef union { struct { uint8_t CC : 8; } bit; uint8_t reg; } TC_COUNT8_CC_Type;
typedef struct {
    volatile TC_COUNT8_CTRLA_Type CTRLA;
    volatile TC_COUNT8_READREQ_Type READREQ;
    volatile TC_COUNT8_CTRLBCLR_Type CTRLBCLR;
    volatile TC_COUNT8_CTRLBSET_Type CTRLBSET;
    volatile TC_COUNT8_CTRLC_Type CTRLC;
    uint8_t RESERVED0[3];
    volatile TC_COUNT8_EVCTRL_Type EVCTRL;
    volatile TC_COUNT8_INTENCLR_Type INTENCLR;
    volatile TC_COUNT8_INTENSET_Type INTENSET;
    volatile TC_COUNT8_INTFLAG_Type INTFLAG;
    volatile TC_COUNT8_STATUS_Type STATUS;
    volatile TC_COUNT8_COUNT_Type COUNT;
    uint8_t RESERVED1[3];
    volatile TC_COUNT8_PER_Type PER;
    uint8_t RESERVED2[3];
    volatile TC_COUNT8_CC_Type CC[2];
} TcCount8;

typedef union { struct { uint16_t SWRST : 1; uint16_t ENABLE : 1; uint16_t MODE : 2; uint16_t : 1; uint16_t WAVEGEN : 2; uint16_t : 1; uint16_t PRESCALER : 3; uint16_t RUNSTDBY : 1; uint16_t PRESCSYNC : 2; uint16_t : 2; } bit; uint16_t reg; } TC_COUNT16_CTRLA_Type;
typedef union { struct { uint16_t ADDR : 5; uint16_t : 9; uint16_t RCONT : 1; uint16_t RREQ : 1; } bit; uint16_t reg; } TC_COUNT16_READREQ_Type;
typedef union { struct { uint8_t DIR : 1; uint8_t : 1; uint8_t ONESHOT : 1; uint8_t : 3; uint8_t CMD : 2; } bit; uint8_t reg; } TC_COUNT16_CTRLBCLR_Type;
typedef union { struct { uint8_t DIR : 1; uint8_t : 1; uint8_t ONESHOT : 1; uint8_t : 3; uint8_t CMD : 2; } bit; uint8_t reg; } TC_COUNT16_CTRLBSET_Type;
typedef union { struct { uint8_t INVEN0 : 1; uint8_t INVEN1 : 1; uint8_t : 2; uint8_t CPTEN0 : 1; uint8_t CPTEN1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT16_CTRLC_Type;
typedef union { struct { uint16_t EVACT : 3; uint16_t : 1; uint16_t TCINV : 1; uint16_t TCEI : 1; uint16_t : 2; uint16_t OVFEO : 1; uint16_t : 3; uint16_t MCEO0 : 1; uint16_t MCEO1 : 1; uint16_t : 2; } bit; uint16_t reg; } TC_COUNT16_EVCTRL_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 1; uint8_t SYNCRDY : 1; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT16_INTENCLR_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 1; uint8_t SYNCRDY : 1; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT16_INTENSET_Type;
typedef union { struct { uint8_t OVF : 1; uint8_t ERR : 1; uint8_t : 1; uint8_t SYNCRDY : 1; uint8_t MC0 : 1; uint8_t MC1 : 1; uint8_t : 2; } bit; uint8_t reg; } TC_COUNT16_INTFLAG_Type;
typedef union { struct { uint8_t : 3; uint8_t STOP : 1; uint8_t SLAVE : 1; uint8_t : 2; uint8_t SYNCBUSY : 1; } bit; uint8_t reg; } TC_COUNT16_STATUS_Type;
typedef union { struct { uint16_t COUNT : 16; } bit; uint16_t reg; } TC_COUNT16_COUNT_Type;
typedef union { struct { uint16_t CC : 16; } bit; uint16_t reg; } TC_COUNT16_CC_Type;
typedef struct {
    volatile TC_COUNT16_CTRLA_Type CTRLA;
    volatile TC_COUNT16_READREQ_Type READREQ;
    volatile TC_COUNT16_CTRLBCLR_Type CTRLBCLR;
    volatile TC_COUNT16_CTRLBSET_Type CTRLBSET;
    volatile TC_COUNT16_CTRLC_Type CTRLC;
    uint8_t RESERVED0[3];
    volatile TC_COUNT16_EVCTRL_Type EVCTRL;
    volatile TC_COUNT16_INTENCLR_Type INTENCLR;
    volatile TC_COUNT16_INTENSET_Type INTENSET;
    volatile TC_COUNT16_INTFLAG_Type INTFLAG;
    volatile TC_COUNT16_STATUS_Type STATUS;
    volatile TC_COUNT16_COUNT_Type COUNT;
    uint8_t RESERVED1[6];
    volatile TC_COUNT16_CC_Type CC[2];
} TcCount16;

typedef union {
    TcCount8 COUNT8;
    TcCount16 COUNT16;
} Tc;

#define PM ((Pm *)0x40000400UL)
#define SYSCTRL ((Sysctrl *)0x40000800UL)
#define GCLK ((Gclk *)0x40000C00UL)
#define EIC ((Eic *)0x40001800UL)
#define ADC ((Adc *)0x42004000UL)
#define PAC0 ((Pac *)0x40000000UL)
#define PAC1 ((Pac *)0x41000000UL)
#define PAC2 ((Pac *)0x42000000UL)
#define PORT ((Port *)0x41004400UL)
#define PORT_IOBUS ((Port *)0x60000000UL)
#define RTC ((Rtc *)0x40001400UL)
#define SERCOM0 ((Sercom *)0x42000800UL)
#define SERCOM1 ((Sercom *)0x42000C00UL)
#define SERCOM2 ((Sercom *)0x42001000UL)
#define SERCOM3 ((Sercom *)0x42001400UL)
#define SERCOM4 ((Sercom *)0x42001800UL)
#define SERCOM5 ((Sercom *)0x42001C00UL)
#define TC3 ((Tc *)0x42002C00UL)
#define TC4 ((Tc *)0x42003000UL)
#define TC5 ((Tc *)0x42003400UL)
#define TC6 ((Tc *)0x42003800UL)
#define TC7 ((Tc *)0x42003C00UL)

#define PM_AHBMASK_DMAC (1ul << 5)
#define PM_AHBMASK_USB (1ul << 6)
#define PM_APBAMASK_WDT (1ul << 4)
#define PM_APBAMASK_RTC (1ul << 5)
#define PM_APBAMASK_EIC (1ul << 6)
#define PM_APBBMASK_DMAC (1ul << 4)
#define PM_APBBMASK_USB (1ul << 5)
#define PM_APBCMASK_SERCOM0 (1ul << 2)
#define PM_APBCMASK_SERCOM1 (1ul << 3)
#define PM_APBCMASK_TC3 (1ul << 11)
#define PM_APBCMASK_TC4 (1ul << 12)
#define PM_APBCMASK_TC5 (1ul << 13)
#define PM_APBCMASK_ADC (1ul << 16)
#define SYSCTRL_XOSC32K_ENABLE (1ul << 1)
#define SYSCTRL_XOSC32K_XTALEN (1ul << 2)
#define SYSCTRL_XOSC32K_EN32K (1ul << 3)
#define SYSCTRL_XOSC32K_AAMPEN (1ul << 5)
#define SYSCTRL_XOSC32K_RUNSTDBY (1ul << 6)
#define SYSCTRL_XOSC32K_ONDEMAND (1ul << 7)
#define SYSCTRL_XOSC32K_STARTUP_Msk (0x7ul << 8)
#define SYSCTRL_XOSC32K_STARTUP(value) (SYSCTRL_XOSC32K_STARTUP_Msk & ((uint32_t)(value) << 8))
#define SYSCTRL_OSC32K_ENABLE (1ul << 1)
#define SYSCTRL_OSC32K_EN32K (1ul << 2)
#define SYSCTRL_OSC32K_RUNSTDBY (1ul << 6)
#define SYSCTRL_OSC32K_ONDEMAND (1ul << 7)
#define SYSCTRL_BOD33_RUNSTDBY (1ul << 6)
#define SYSCTRL_BOD33_MODE (1ul << 8)
#define SYSCTRL_BOD33_CEN (1ul << 9)
#define GCLK_CLKCTRL_ID_Msk (0x3ful << 0)
#define GCLK_CLKCTRL_ID(value) (GCLK_CLKCTRL_ID_Msk & ((uint32_t)(value) << 0))
#define GCLK_CLKCTRL_GEN_Msk (0xful << 8)
#define GCLK_CLKCTRL_GEN(value) (GCLK_CLKCTRL_GEN_Msk & ((uint32_t)(value) << 8))
#define GCLK_CLKCTRL_CLKEN (1ul << 14)
#define GCLK_GENCTRL_ID_Msk (0xful << 0)
#define GCLK_GENCTRL_ID(value) (GCLK_GENCTRL_ID_Msk & ((uint32_t)(value) << 0))
#define GCLK_GENCTRL_SRC_Msk (0x1ful << 8)
#define GCLK_GENCTRL_SRC(value) (GCLK_GENCTRL_SRC_Msk & ((uint32_t)(value) << 8))
#define GCLK_GENCTRL_GENEN (1ul << 16)
#define GCLK_GENCTRL_OE (1ul << 19)
#define GCLK_GENCTRL_DIVSEL (1ul << 20)
#define GCLK_GENCTRL_RUNSTDBY (1ul << 21)
#define GCLK_GENDIV_ID_Msk (0xful << 0)
#define GCLK_GENDIV_ID(value) (GCLK_GENDIV_ID_Msk & ((uint32_t)(value) << 0))
#define GCLK_GENDIV_DIV_Msk (0xfffful << 8)
#define GCLK_GENDIV_DIV(value) (GCLK_GENDIV_DIV_Msk & ((uint32_t)(value) << 8))
#define EIC_CTRL_ENABLE (1ul << 1)
#define ADC_CTRLA_ENABLE (1ul << 1)
#define ADC_CTRLA_RUNSTDBY (1ul << 2)
#define ADC_CTRLB_PRESCALER_Msk (0x7ul << 8)
#define ADC_CTRLB_PRESCALER(value) (ADC_CTRLB_PRESCALER_Msk & ((uint32_t)(value) << 8))
#define ADC_SWTRIG_START (1ul << 1)
#define ADC_INPUTCTRL_MUXPOS_Msk (0x1ful << 0)
#define ADC_INPUTCTRL_MUXPOS(value) (ADC_INPUTCTRL_MUXPOS_Msk & ((uint32_t)(value) << 0))
#define ADC_INPUTCTRL_MUXNEG_Msk (0x1ful << 8)
#define ADC_INPUTCTRL_MUXNEG(value) (ADC_INPUTCTRL_MUXNEG_Msk & ((uint32_t)(value) << 8))
#define ADC_INTENCLR_RESRDY (1ul << 0)
#define ADC_INTENSET_RESRDY (1ul << 0)
#define PORT_WRCONFIG_PINMASK_Msk (0xfffful << 0)
#define PORT_WRCONFIG_PINMASK(value) (PORT_WRCONFIG_PINMASK_Msk & ((uint32_t)(value) << 0))
#define PORT_WRCONFIG_INEN (1ul << 17)
#define PORT_WRCONFIG_PULLEN (1ul << 18)
#define PORT_WRCONFIG_WRPMUX (1ul << 28)
#define PORT_WRCONFIG_WRPINCFG (1ul << 30)
#define PORT_WRCONFIG_HWSEL (1ul << 31)
#define PORT_PMUX_PMUXE_Msk (0xful << 0)
#define PORT_PMUX_PMUXE(value) (PORT_PMUX_PMUXE_Msk & ((uint32_t)(value) << 0))
#define PORT_PMUX_PMUXO_Msk (0xful << 4)
#define PORT_PMUX_PMUXO(value) (PORT_PMUX_PMUXO_Msk & ((uint32_t)(value) << 4))
#define PORT_PINCFG_PMUXEN (1ul << 0)
#define PORT_PINCFG_INEN (1ul << 1)
#define PORT_PINCFG_PULLEN (1ul << 2)
#define RTC_MODE0_CTRL_SWRST (1ul << 0)
#define RTC_MODE0_CTRL_ENABLE (1ul << 1)
#define RTC_MODE0_CTRL_MATCHCLR (1ul << 7)
#define RTC_MODE0_INTENSET_CMP0 (1ul << 0)
#define RTC_MODE0_INTFLAG_CMP0 (1ul << 0)
#define SERCOM_USART_CTRLA_SWRST (1ul << 0)
#define SERCOM_USART_CTRLA_ENABLE (1ul << 1)
#define SERCOM_USART_CTRLA_MODE_Msk (0x7ul << 2)
#define SERCOM_USART_CTRLA_MODE(value) (SERCOM_USART_CTRLA_MODE_Msk & ((uint32_t)(value) << 2))
#define SERCOM_USART_CTRLA_TXPO_Msk (0x3ul << 16)
#define SERCOM_USART_CTRLA_TXPO(value) (SERCOM_USART_CTRLA_TXPO_Msk & ((uint32_t)(value) << 16))
#define SERCOM_USART_CTRLA_DORD (1ul << 30)
#define SERCOM_USART_CTRLB_TXEN (1ul << 16)
#define SERCOM_USART_INTENSET_TXC (1ul << 1)
#define SERCOM_USART_INTFLAG_TXC (1ul << 1)
#define TC_COUNT16_CTRLA_ENABLE (1ul << 1)
#define TC_COUNT16_CTRLA_MODE_Msk (0x3ul << 2)
#define TC_COUNT16_CTRLA_MODE(value) (TC_COUNT16_CTRLA_MODE_Msk & ((uint32_t)(value) << 2))
#define TC_COUNT16_CTRLA_WAVEGEN_Msk (0x3ul << 5)
#define TC_COUNT16_CTRLA_WAVEGEN(value) (TC_COUNT16_CTRLA_WAVEGEN_Msk & ((uint32_t)(value) << 5))
#define TC_COUNT16_CTRLA_PRESCALER_Msk (0x7ul << 8)
#define TC_COUNT16_CTRLA_PRESCALER(value) (TC_COUNT16_CTRLA_PRESCALER_Msk & ((uint32_t)(value) << 8))
#define TC_COUNT16_CTRLA_RUNSTDBY (1ul << 11)
#define TC_COUNT16_INTENSET_OVF (1ul << 0)
#define TC_COUNT16_INTFLAG_OVF (1ul << 0)
#define GCLK_CLKCTRL_ID_RTC GCLK_CLKCTRL_ID(4)
#define GCLK_CLKCTRL_ID_EIC GCLK_CLKCTRL_ID(5)
#define GCLK_CLKCTRL_ID_SERCOM1_CORE GCLK_CLKCTRL_ID(21)
#define GCLK_CLKCTRL_ID_TCC2_TC3 GCLK_CLKCTRL_ID(27)
#define GCLK_CLKCTRL_ID_TC4_TC5 GCLK_CLKCTRL_ID(28)
#define GCLK_CLKCTRL_ID_ADC GCLK_CLKCTRL_ID(30)
#define GCLK_GENCTRL_SRC_OSCULP32K GCLK_GENCTRL_SRC(3)
#define GCLK_GENCTRL_SRC_XOSC32K GCLK_GENCTRL_SRC(5)
#define GCLK_GENCTRL_SRC_OSC8M GCLK_GENCTRL_SRC(6)
#endif

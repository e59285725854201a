using System.Globalization;
using System.Text;

namespace PowerLint.Bench;

/// <summary>
/// The drivers of <see cref="VendorStyleImage"/>: three files a peripheral, of settings, of transfers that wait, and of transfers that
/// interrupts carry on.
/// </summary>
internal static class VendorStyleDriver
{
    /// <summary>The functions of a driver that modules call, in its first file.</summary>
    public const int Functions = 14;

    private const int Others = 13;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>What the names of a peripheral's files end in.</summary>
    public static string[] Parts { get; } = ["", "_wait", "_irq"];

    /// <summary>The files of a peripheral's driver.</summary>
    public static IEnumerable<(string Part, string Text)> Write(int n)
    {
        yield return (Parts[0], Settings(n));
        yield return (Parts[1], Transfers(n));
        yield return (Parts[2], Interrupts(n));
    }

    /// <summary>The declarations of what the second and third file offer.</summary>
    public static string Prototypes(int n)
    {
        var text = new StringBuilder();
        for (var i = 0; i < Others; i++)
        {
            text.Append(
                Plain,
                $$"""
                uint8_t HAL_P{{n}}_Config{{i}}(HAL_P{{n}}_HandleTypeDef *handle, const HAL_P{{n}}_InitTypeDef *settings);
                uint8_t HAL_P{{n}}_Transfer{{i}}(HAL_P{{n}}_HandleTypeDef *handle, const uint8_t *data, uint16_t size, uint16_t timeout);
                uint8_t HAL_P{{n}}_Start{{i}}(HAL_P{{n}}_HandleTypeDef *handle, const uint8_t *data, uint16_t size);
                void HAL_P{{n}}_Handler{{i}}(HAL_P{{n}}_HandleTypeDef *handle);

                """
            );
        }

        return text.ToString();
    }

    private static string Settings(int n)
    {
        var text = new StringBuilder();
        text.Append(
            Plain,
            $$"""
            #include "hal.h"

            P{{n}}_TypeDef p{{n}}_instance;

            uint8_t HAL_P{{n}}_Init(HAL_P{{n}}_HandleTypeDef *handle)
            {
              if (handle == 0)
              {
                return 1U;
              }
              for (uint8_t position = 0U; position < 8U; position++)
              {
                if ((handle->Init.Setting1 & (1U << position)) != 0U)
                {
                  handle->Instance->R1 |= (uint16_t)(1U << position);
                }
                else
                {
                  handle->Instance->R1 &= (uint16_t)~(1U << position);
                }
              }
              HAL_P{{n}}_SetR0(handle->Instance, handle->Init.Setting0);
              handle->Instance->R2 = handle->Init.Setting2;
              handle->State = 1U;
              return 0U;
            }

            """
        );
        for (var function = 0; function < Functions; function++)
        {
            text.Append(
                Plain,
                $$"""

                /**
                  * @brief  Does one thing with the peripheral.
                  * @param  handle  the peripheral's handle
                  * @param  value   what to do it with
                  * @retval 0 if it was done
                  */
                uint8_t HAL_P{{n}}_Do{{function}}(HAL_P{{n}}_HandleTypeDef *handle, uint16_t value)
                {
                  uint16_t mask = (uint16_t)(P{{n}}_R{{function}}_F1 | P{{n}}_R{{function}}_F2);

                  if (!IS_P{{n}}_G3(handle->Init.Setting3))
                  {
                    return 1U;
                  }
                  switch (handle->State)
                  {
                    case 0U:
                      handle->Instance->R{{function}} &= (uint16_t)~mask;
                      break;
                    case 1U:
                      handle->Instance->R{{function}} |= (uint16_t)(value & mask);
                      handle->Count++;
                      break;
                    default:
                      handle->State = 0U;
                      return 2U;
                  }
                  if ((handle->Count > 3U) && (handle->Complete != 0))
                  {
                    handle->Complete(handle);
                  }
                  return (HAL_P{{n}}_GetR{{function}}(handle->Instance) != 0U) ? 0U : 3U;
                }

                """
            );
        }

        for (var i = 0; i < Others; i++)
        {
            text.Append(Setting(n, i));
        }

        return text.ToString();
    }

    private static string Setting(int n, int i)
    {
        var text = new StringBuilder();
        text.Append(
            Plain,
            $$"""

            /**
              * @brief  Sets the peripheral up for one of its uses.
              * @note   The peripheral must be idle.
              * @param  handle    the peripheral's handle
              * @param  settings  how it is to work
              * @retval 0 if it was set up
              */
            uint8_t HAL_P{{n}}_Config{{i}}(HAL_P{{n}}_HandleTypeDef *handle, const HAL_P{{n}}_InitTypeDef *settings)
            {
              uint16_t value;

              if ((handle == 0) || (settings == 0))
              {
                return 1U;
              }
              if (handle->Lock != 0U)
              {
                return 2U;
              }
              handle->Lock = 1U;

            """
        );
        for (var group = 0; group < 3 + i % 2; group++)
        {
            var register = (group + i) % 14;
            text.Append(
                Plain,
                $$"""
                  if (!IS_P{{n}}_G{{group}}(settings->Setting{{group}}))
                  {
                    handle->Error |= 0x{{1 << group:X2}}U;
                    handle->Lock = 0U;
                    return 3U;
                  }
                  value = handle->Instance->R{{register}};
                  if (settings->Setting{{group}} == HAL_P{{n}}_G{{group}}_V1)
                  {
                    value = (uint16_t)((value & (uint16_t)~P{{n}}_R{{register}}_F3) | P{{n}}_R{{register}}_F4);
                  }
                  else if (settings->Setting{{group}} != handle->Init.Setting{{group}})
                  {
                    value |= P{{n}}_R{{register}}_F3;
                  }
                  handle->Instance->R{{register}} = value;

                """
            );
        }

        return text.Append("  handle->Init = *settings;\n  handle->Lock = 0U;\n  return 0U;\n}\n").ToString();
    }

    private static string Transfers(int n)
    {
        var text = new StringBuilder(
            string.Create(
                Plain,
                $$"""
                #include "hal.h"

                /* Waits until a flag is as wanted, at most so many rounds. */
                static uint8_t wait_for(HAL_P{{n}}_HandleTypeDef *handle, uint16_t flag, uint8_t wanted, uint16_t timeout)
                {
                  uint16_t rounds = timeout;

                  while (((handle->Instance->R5 & flag) != 0U) != (wanted != 0U))
                  {
                    if (rounds == 0U)
                    {
                      handle->Instance->R4 &= (uint16_t)~(P{{n}}_R4_F0 | P{{n}}_R4_F1);
                      handle->State = 1U;
                      handle->Lock = 0U;
                      return 3U;
                    }
                    rounds--;
                  }
                  return 0U;
                }

                """
            )
        );
        for (var i = 0; i < Others; i++)
        {
            text.Append(
                Plain,
                $$"""

                /**
                  * @brief  Sends a number of bytes and waits until they are sent.
                  * @param  handle   the peripheral's handle
                  * @param  data     the bytes
                  * @param  size     how many they are
                  * @param  timeout  how many rounds to wait for each of them
                  * @retval 0 if they were sent
                  */
                uint8_t HAL_P{{n}}_Transfer{{i}}(HAL_P{{n}}_HandleTypeDef *handle, const uint8_t *data, uint16_t size, uint16_t timeout)
                {
                  const uint16_t *wide = 0;
                  uint16_t sum = 0U;

                  if (handle->State != 1U)
                  {
                    return 2U;
                  }
                  if ((data == 0) || (size == 0U))
                  {
                    return 1U;
                  }
                  if (handle->Lock != 0U)
                  {
                    return 2U;
                  }
                  handle->Lock = 1U;
                  handle->Error = 0U;
                  handle->State = {{2 + i}}U;
                  handle->Size = size;
                  handle->Count = size;
                  if ((handle->Init.Setting4 == HAL_P{{n}}_G4_V2) && (handle->Init.Setting5 == HAL_P{{n}}_G5_V0))
                  {
                    wide = (const uint16_t *)(const void *)data;
                  }
                  if ((handle->Instance->R4 & P{{n}}_R4_F0) == 0U)
                  {
                    handle->Instance->R4 |= P{{n}}_R4_F0;
                  }
                  while (handle->Count > 0U)
                  {
                    if (wait_for(handle, P{{n}}_R5_F{{i % 9}}, 1U, timeout) != 0U)
                    {
                      handle->Error |= P{{n}}_R5_F{{i % 9}};
                      return 3U;
                    }
                    if (wide != 0)
                    {
                      handle->Instance->R{{(i + 6) % 14}} = *wide;
                      sum = (uint16_t)(sum + *wide);
                      wide++;
                    }
                    else
                    {
                      handle->Instance->R{{(i + 6) % 14}} = *data;
                      sum = (uint16_t)(sum ^ *data);
                      data++;
                    }
                    handle->Count--;
                    if ((handle->Count == 0U) && (handle->Init.Setting6 == HAL_P{{n}}_G6_V1))
                    {
                      handle->Instance->R{{(i + 7) % 14}} = sum;
                    }
                  }
                  if (wait_for(handle, P{{n}}_R5_F7, 0U, timeout) != 0U)
                  {
                    handle->Error |= P{{n}}_R5_F7;
                    return 3U;
                  }
                  if (handle->Init.Setting7 == HAL_P{{n}}_G7_V3)
                  {
                    (void)HAL_P{{n}}_GetR6(handle->Instance);
                    (void)HAL_P{{n}}_GetR5(handle->Instance);
                  }
                  handle->State = 1U;
                  handle->Lock = 0U;
                  return (handle->Error != 0U) ? 1U : 0U;
                }

                """
            );
        }

        return text.ToString();
    }

    private static string Interrupts(int n)
    {
        var text = new StringBuilder("#include \"hal.h\"\n");
        for (var i = 0; i < Others; i++)
        {
            text.Append(
                Plain,
                $$"""

                static void next{{i}}(HAL_P{{n}}_HandleTypeDef *handle)
                {
                  if (handle->Count == 0U)
                  {
                    handle->Instance->R3 &= (uint16_t)~P{{n}}_R3_F{{i % 9}};
                    handle->State = 1U;
                    if (handle->Complete != 0)
                    {
                      handle->Complete(handle);
                    }
                  }
                  else
                  {
                    handle->Instance->R{{(i + 6) % 14}} = *handle->Data;
                    handle->Data++;
                    handle->Count--;
                  }
                }

                /**
                  * @brief  Starts to send a number of bytes; interrupts carry on with it.
                  * @param  handle  the peripheral's handle
                  * @param  data    the bytes, which must stay until they are sent
                  * @param  size    how many they are
                  * @retval 0 if it has begun
                  */
                uint8_t HAL_P{{n}}_Start{{i}}(HAL_P{{n}}_HandleTypeDef *handle, const uint8_t *data, uint16_t size)
                {
                  if (handle->State != 1U)
                  {
                    return 2U;
                  }
                  if ((data == 0) || (size == 0U))
                  {
                    return 1U;
                  }
                  handle->Data = data;
                  handle->Size = size;
                  handle->Count = size;
                  handle->Error = 0U;
                  handle->State = {{2 + i}}U;
                  switch (handle->Init.Setting{{i % 12}})
                  {
                    case HAL_P{{n}}_G{{i % 12}}_V0:
                      handle->Instance->R3 |= P{{n}}_R3_F{{i % 9}};
                      break;
                    case HAL_P{{n}}_G{{i % 12}}_V1:
                    case HAL_P{{n}}_G{{i % 12}}_V2:
                      handle->Instance->R3 |= (uint16_t)(P{{n}}_R3_F{{i % 9}} | P{{n}}_R3_F8);
                      break;
                    default:
                      handle->State = 1U;
                      return 3U;
                  }
                  return 0U;
                }

                /**
                  * @brief  What the interrupt's handler calls.
                  * @param  handle  the peripheral's handle
                  */
                void HAL_P{{n}}_Handler{{i}}(HAL_P{{n}}_HandleTypeDef *handle)
                {
                  uint16_t flags = HAL_P{{n}}_GetR5(handle->Instance);
                  uint16_t enabled = handle->Instance->R3;

                  if (((flags & P{{n}}_R5_F{{i % 9}}) != 0U) && ((enabled & P{{n}}_R3_F{{i % 9}}) != 0U))
                  {
                    next{{i}}(handle);
                    return;
                  }
                  if ((flags & (P{{n}}_R5_F2 | P{{n}}_R5_F6)) != 0U)
                  {
                    if ((flags & P{{n}}_R5_F2) != 0U)
                    {
                      handle->Error |= P{{n}}_R5_F2;
                      handle->Instance->R5 = P{{n}}_R5_F2;
                    }
                    if (((flags & P{{n}}_R5_F6) != 0U) && (handle->State != 1U))
                    {
                      handle->Error |= P{{n}}_R5_F6;
                      handle->Instance->R5 = P{{n}}_R5_F6;
                    }
                    if (handle->Error != 0U)
                    {
                      handle->Instance->R3 &= (uint16_t)~(P{{n}}_R3_F{{i % 9}} | P{{n}}_R3_F8);
                      handle->State = 1U;
                      if (handle->Complete != 0)
                      {
                        handle->Complete(handle);
                      }
                    }
                  }
                }

                """
            );
        }

        return text.ToString();
    }
}

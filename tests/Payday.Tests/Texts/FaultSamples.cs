using System.Collections.Immutable;
using System.Reflection;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Tests.Texts;

/// <summary>Makes a fault of each case, with values that show where each of them stands in the text.</summary>
internal static class FaultSamples
{
    private static readonly Currency Dollars = Currency.FromCode("USD");
    private static readonly LocalDate Friday = new(2026, 3, 6);

    /// <summary>A fault of a case.</summary>
    /// <exception cref="NotSupportedException">It has a value of a kind for which there is no sample here.</exception>
    public static Fault Of(Type type) => (Fault)Made(type);

    private static object Value(Type type, string name)
    {
        Type kind = Nullable.GetUnderlyingType(type) ?? type;
        return kind == typeof(string) ? $"<{name}>"
            : kind == typeof(int) ? 3
            : kind == typeof(long) ? 4_000_000L
            : kind == typeof(byte) ? (byte)1
            : kind == typeof(bool) ? true
            : kind == typeof(decimal) ? 0.5m
            : kind == typeof(Currency) ? Dollars
            : kind == typeof(Money) ? Money.FromMinorUnits(name.Length * 111, Dollars)
            : kind == typeof(LocalDate) ? Friday
            : kind == typeof(YearMonth) ? Friday.ToYearMonth()
            : kind == typeof(LocalDateTime) ? Friday.At(new LocalTime(8, 15))
            : kind == typeof(NumberStyle) ? NumberStyle.CommaPoint
            : kind.IsEnum ? Enum.GetValues(kind).Cast<object>().Last()
            : kind.IsGenericType && kind.GetGenericTypeDefinition() == typeof(ImmutableArray<>) ? Many(kind.GetGenericArguments()[0], name)
            : kind.Namespace?.StartsWith("Payday", StringComparison.Ordinal) != true ? throw new NotSupportedException($"There is no sample of {kind}.")
            : kind == typeof(Fault) ? new Core.Calendar.DateFault.NotADate()
            : kind.IsAbstract ? Made(kind.Assembly.GetTypes().Where(one => one.IsSubclassOf(kind) && !one.IsAbstract).OrderBy(one => one.FullName, StringComparer.Ordinal).First())
            : Made(kind);
    }

    private static object Many(Type type, string name)
    {
        var values = Array.CreateInstance(type, 1);
        values.SetValue(Value(type, name), 0);
        return typeof(ImmutableArray).GetMethods().First(one => one.Name == nameof(ImmutableArray.Create) && one.GetParameters() is [{ ParameterType.IsArray: true }])
            .MakeGenericMethod(type).Invoke(null, [values])!;
    }

    private static object Made(Type type)
    {
        // The other constructor of a record copies one.
        ConstructorInfo maker = type.GetConstructors(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance)
            .Where(one => one.GetParameters() is not [var only] || only.ParameterType != type)
            .OrderByDescending(one => one.GetParameters().Length)
            .FirstOrDefault() ?? throw new NotSupportedException($"There is no sample of {type}.");
        return maker.Invoke([.. maker.GetParameters().Select(one => Value(one.ParameterType, one.Name!))]);
    }
}

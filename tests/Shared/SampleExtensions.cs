using System.Runtime.CompilerServices;
using System.Runtime.ExceptionServices;
using System.Text;
using CsCheck;

namespace Payday;

/// <summary>Tries a property on generated cases: the same ones each time, or others where a hunt is asked for.</summary>
/// <remarks>
/// A test run says of a change whether it broke something, so it must not depend on the day's luck: each property has
/// its own cases, and they are the same on every machine. New faults are hunted for apart, by CsCheck's own variables:
/// with <c>CsCheck_Iter</c>, <c>CsCheck_Time</c> or <c>CsCheck_Seed</c> set, cases are random as CsCheck makes them.
/// These methods stand nearer to the tests than CsCheck's of the same name, so a test need not know.
/// </remarks>
internal static class SampleExtensions
{
    private const int UsualCases = 100;

    private static readonly bool Hunting = new[] { "CsCheck_Iter", "CsCheck_Time", "CsCheck_Seed" }
        .Any(name => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(name)));

    /// <summary>Runs an assertion on the property's cases, or on random ones.</summary>
    /// <param name="gen">Makes the cases.</param>
    /// <param name="assert">Throws where the property doesn't hold.</param>
    /// <param name="iter">How many cases.</param>
    /// <param name="threads">How many at a time; as many as the machine likes where it isn't said.</param>
    /// <param name="property">The property's name, from which its cases come.</param>
    public static void Sample<T>(
        this Gen<T> gen, Action<T> assert, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "")
    {
        if (Hunting)
        {
            Check.Sample(gen, assert, iter: iter, threads: threads);
            return;
        }

        ulong seed = SeedOf(property);
        var failed = new (string Seed, Exception Fault)?[iter];
        Parallel.For(0, iter, new ParallelOptions { MaxDegreeOfParallelism = threads }, (i, loop) =>
        {
            var numbers = new PCG((uint)i + 1, seed);
            string itself = numbers.ToString();
            try
            {
                assert(gen.Generate(numbers, null!, out _));
            }
            catch (Exception fault)
            {
                failed[i] = (itself, fault);
                loop.Break();
            }
        });
        if (failed.FirstOrDefault(fault => fault is not null) is { } first)
        {
            // CsCheck tries it again and looks for a smaller case; what it throws says both.
            Check.Sample(gen, assert, seed: first.Seed, iter: iter, threads: threads);
            ExceptionDispatchInfo.Throw(first.Fault);
        }
    }

    /// <summary>Runs an assertion on cases of two values.</summary>
    public static void Sample<T1, T2>(
        this Gen<(T1, T2)> gen, Action<T1, T2> assert, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => assert(values.Item1, values.Item2), iter, threads, property);

    /// <summary>Runs an assertion on cases of three values.</summary>
    public static void Sample<T1, T2, T3>(
        this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> assert, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => assert(values.Item1, values.Item2, values.Item3), iter, threads, property);

    /// <summary>Runs an assertion on cases of four values.</summary>
    public static void Sample<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> assert, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => assert(values.Item1, values.Item2, values.Item3, values.Item4), iter, threads, property);

    /// <summary>Runs an assertion on cases of five values.</summary>
    public static void Sample<T1, T2, T3, T4, T5>(
        this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> assert, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => assert(values.Item1, values.Item2, values.Item3, values.Item4, values.Item5), iter, threads, property);

    /// <summary>Runs an assertion on cases of six values.</summary>
    public static void Sample<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> assert, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => assert(values.Item1, values.Item2, values.Item3, values.Item4, values.Item5, values.Item6), iter, threads, property);

    /// <summary>Asks on each case whether the property holds.</summary>
    public static void Sample<T>(
        this Gen<T> gen, Func<T, bool> holds, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(
            value =>
            {
                if (!holds(value))
                {
                    throw new InvalidOperationException($"It doesn't hold for {value}.");
                }
            },
            iter,
            threads,
            property);

    /// <summary>Asks on each case of two values whether the property holds.</summary>
    public static void Sample<T1, T2>(
        this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => holds(values.Item1, values.Item2), iter, threads, property);

    /// <summary>Asks on each case of three values whether the property holds.</summary>
    public static void Sample<T1, T2, T3>(
        this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => holds(values.Item1, values.Item2, values.Item3), iter, threads, property);

    /// <summary>Asks on each case of four values whether the property holds.</summary>
    public static void Sample<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, int iter = UsualCases, int threads = -1, [CallerMemberName] string property = "") =>
        gen.Sample(values => holds(values.Item1, values.Item2, values.Item3, values.Item4), iter, threads, property);

    // FNV-1a: a text's own hash code changes from run to run.
    private static ulong SeedOf(string property) => unchecked(
        Encoding.UTF8.GetBytes(property).Aggregate(14695981039346656037UL, (hash, part) => (hash ^ part) * 1099511628211UL));
}

using System.Runtime.Intrinsics;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>Numbers a tape works on: one, or several side by side for as many questions at once. The digits are the same.</summary>
/// <typeparam name="T">The number or numbers.</typeparam>
internal interface ILanes<T>
    where T : struct
{
    static abstract T Broadcast(double number);

    static abstract T Add(T left, T right);

    static abstract T Multiply(T left, T right);

    static abstract T Max(T left, T right);
}

/// <summary>One question.</summary>
internal readonly struct SingleLane : ILanes<double>
{
    public static double Broadcast(double number) => number;

    public static double Add(double left, double right) => left + right;

    public static double Multiply(double left, double right) => left * right;

    public static double Max(double left, double right) => Math.Max(left, right);
}

/// <summary>Four questions side by side.</summary>
internal readonly struct FourLanes : ILanes<Vector256<double>>
{
    public static Vector256<double> Broadcast(double number) => Vector256.Create(number);

    public static Vector256<double> Add(Vector256<double> left, Vector256<double> right) => left + right;

    public static Vector256<double> Multiply(Vector256<double> left, Vector256<double> right) => left * right;

    public static Vector256<double> Max(Vector256<double> left, Vector256<double> right) => Vector256.MaxNative(left, right);
}

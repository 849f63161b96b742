namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>A product of many numbers of 0 or more, as a logarithm. Numbers of a usual size are multiplied first, since logarithms are dear.</summary>
internal struct LogProduct
{
    private static readonly double Small = Math.ScaleB(1, -256);
    private static readonly double Large = Math.ScaleB(1, 256);

    private double _log;
    private double _product;

    public LogProduct() => _product = 1;

    /// <summary>Natural logarithm of the product; negative infinity if it is 0.</summary>
    public readonly double Log => _log + Math.Log(_product);

    public void Multiply(double factor)
    {
        if (!IsUsual(factor))
        {
            _log += Math.Log(factor);
            return;
        }

        _product *= factor;
        if (!IsUsual(_product))
        {
            _log += Math.Log(_product);
            _product = 1;
        }
    }

    private static bool IsUsual(double number) => number >= Small && number <= Large;
}

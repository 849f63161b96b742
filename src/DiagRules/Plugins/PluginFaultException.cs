namespace DiagRules.Plugins;

/// <summary>What a plugin does not keep of its contract; the message completes "cannot be used, because ...".</summary>
internal sealed class PluginFaultException(string message, Exception? inner = null) : Exception(message, inner);

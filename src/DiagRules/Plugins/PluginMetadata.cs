using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;

namespace DiagRules.Plugins;

/// <summary>Reads what an assembly says about itself without loading it.</summary>
internal static class PluginMetadata
{
    private const ushort Prolog = 1;    // ECMA-335, II.23.3: how the value of an attribute begins

    /// <summary>The plugin; <see langword="null"/> for any other assembly, for native code, and after reporting.</summary>
    public static PluginInfo? Read(string file, List<Problem> problems)
    {
        try
        {
            using var stream = File.OpenRead(file);
            using var image = new PEReader(stream);
            return image.HasMetadata ? Read(file, image.GetMetadataReader(), problems) : null;
        }
        catch (Exception exception) when (exception
            is BadImageFormatException or IOException or UnauthorizedAccessException or InvalidOperationException or ArgumentException or OverflowException)
        {
            problems.Add(PluginProblems.Unreadable(file, exception.Message.TrimEnd('.')));
            return null;
        }
    }

    private static PluginInfo? Read(string file, MetadataReader metadata, List<Problem> problems)
    {
        if (!metadata.IsAssembly || FindAttribute(metadata) is not { } attribute)
        {
            return null;
        }

        var value = metadata.GetBlobReader(attribute.Value);
        if (value.ReadUInt16() != Prolog)
        {
            throw new BadImageFormatException("its attribute is damaged");
        }

        var name = value.ReadSerializedString() ?? "";
        var version = value.ReadSerializedString() ?? "";
        if (Version.TryParse(version, out var parsed) && parsed.Build >= 0 && parsed.Revision < 0)
        {
            return new PluginInfo(name, parsed, file, BuiltFor(metadata));
        }

        problems.Add(PluginProblems.BadVersion(file, name, version));
        return null;
    }

    private static CustomAttribute? FindAttribute(MetadataReader metadata)
    {
        foreach (var handle in metadata.GetAssemblyDefinition().GetCustomAttributes())
        {
            var attribute = metadata.GetCustomAttribute(handle);
            if (attribute.Constructor.Kind == HandleKind.MemberReference
                && metadata.GetMemberReference((MemberReferenceHandle)attribute.Constructor).Parent is { Kind: HandleKind.TypeReference } parent
                && IsPluginAttribute(metadata, metadata.GetTypeReference((TypeReferenceHandle)parent)))
            {
                return attribute;
            }
        }

        return null;
    }

    private static bool IsPluginAttribute(MetadataReader metadata, TypeReference type) =>
        metadata.StringComparer.Equals(type.Name, nameof(CalculationPluginAttribute))
        && metadata.StringComparer.Equals(type.Namespace, typeof(CalculationPluginAttribute).Namespace!);

    /// <summary>The attribute itself comes from DiagRules.Model, so that there is always a reference to it.</summary>
    private static Version BuiltFor(MetadataReader metadata) => metadata.AssemblyReferences
        .Select(metadata.GetAssemblyReference)
        .Where(reference => metadata.StringComparer.Equals(reference.Name, HostModel.Name))
        .Select(reference => HostModel.ThreeNumbers(reference.Version))
        .DefaultIfEmpty(new Version(0, 0, 0))
        .Max()!;
}

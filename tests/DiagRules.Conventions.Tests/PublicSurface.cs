using System.Reflection;

namespace DiagRules.Conventions.Tests;

/// <summary>What hosts see.</summary>
public sealed class PublicSurface
{
    private static readonly string[] Foreign = ["YamlDotNet", "NRules", "xunit", "System.CommandLine"];

    public static TheoryData<string> Libraries => [.. Repository.Libraries];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_public_class_is_sealed_abstract_or_static(string library)
    {
        var open = Repository.Load(library).GetExportedTypes()
            .Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false })
            .Select(type => type.FullName);

        open.ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void No_foreign_type_shows_in_a_signature(string library)
    {
        var signatures = Repository.Load(library).GetExportedTypes()
            .SelectMany(type => type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .SelectMany(member => TypesOf(member).Select(type => (Member: $"{member.DeclaringType}.{member.Name}", Type: type)));

        signatures
            .Where(use => Foreign.Any(name => use.Type.Assembly.GetName().Name!.StartsWith(name, StringComparison.OrdinalIgnoreCase)))
            .Select(use => $"{use.Member} shows {use.Type}")
            .ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_public_type_lives_in_the_namespace_of_its_library(string library)
    {
        var astray = Repository.Load(library).GetExportedTypes()
            .Where(type => type.Namespace != library && !type.Namespace!.StartsWith(library + ".", StringComparison.Ordinal))
            .Select(type => type.FullName);

        astray.ShouldBeEmpty();
    }

    private static IEnumerable<Type> TypesOf(MemberInfo member)
    {
        IEnumerable<Type> direct = member switch
        {
            MethodInfo method => [method.ReturnType, .. method.GetParameters().Select(parameter => parameter.ParameterType)],
            ConstructorInfo constructor => constructor.GetParameters().Select(parameter => parameter.ParameterType),
            PropertyInfo property => [property.PropertyType],
            FieldInfo field => [field.FieldType],
            EventInfo @event => [@event.EventHandlerType!],
            _ => [],
        };
        return direct.SelectMany(WithArguments);
    }

    private static IEnumerable<Type> WithArguments(Type type) =>
        type.GetGenericArguments().SelectMany(WithArguments).Prepend(type.GetElementType() ?? type);
}

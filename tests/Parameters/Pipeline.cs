using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters.Why;
using Dryfit.Recipe;

namespace Dryfit.Parameters.Tests;

/// <summary>A file's whole way: read, checked, bound, worked out, explained.</summary>
internal static class Pipeline
{
    public static (Mapping? Tree, IReadOnlyList<InputError> Errors) Run(ReadOnlyMemory<byte> file, RecordShape root)
    {
        var read = RecipeReader.Read("r.yaml", file);
        if (read.Value is not { } tree)
            return (null, read.Errors);
        var scope = new Scope(LengthUnit.Inch);
        foreach (var error in read.Errors.Concat(ShapeCheck.Check(tree, root)))
            scope.Report(error);
        ParameterSection.Bind(tree["parameters"] as Mapping, [], scope);
        Binding.CheckFormulas(tree, root, scope);
        WorkOut(tree, root, scope, 0);
        scope.WorkOutAll();
        foreach (var name in scope.Names)
        {
            if (scope.Named(name) is { } figure)
                Assert.NotEmpty(WhyText.Write(figure, LengthFormat.Inches));
        }
        return (tree, scope.Errors);
    }

    private static void WorkOut(Node node, Shape shape, Scope scope, int depth)
    {
        switch (node, shape)
        {
            case (Scalar { IsEmpty: false } scalar, LengthShape):
                scope.Length(scalar, "it");
                break;
            case (Scalar { IsEmpty: false } scalar, CountShape):
                scope.Count(scalar);
                break;
            case (Scalar { IsEmpty: false } scalar, NumberShape):
                scope.Number(scalar, "it");
                break;
            case (_, EitherShape either):
                WorkOut(node, Alternatives.Pick(node, either), scope, depth + 1);
                break;
            case (Sequence list, ListShape of):
                foreach (var item in list.Items)
                    WorkOut(item, of.Item, scope, depth + 1);
                break;
            case (Mapping names, NamedShape named):
                foreach (var entry in names.Entries)
                    WorkOut(entry.Value, named.Item, scope, depth + 1);
                break;
            case (Mapping word, RecordShape record):
                foreach (
                    var field in record.Fields.Where(f => word[f.Key] is not null && f.Shape != ParameterSection.Shape)
                )
                    WorkOut(word[field.Key]!, field.Shape, scope, depth + 1);
                break;
        }
    }
}

using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>Finds the lines that may carry edges: those in which faces of bodies meet.</summary>
internal sealed class LineFinder(BodyTable bodies, LineTable lines, FaceCrossing crossing)
{
    private readonly Store<int> nearHere = new();
    private readonly Store<int> nearThere = new();

    /// <summary>Notes every line in which two faces meet or may meet: edges of the bodies themselves, and where bodies cross.</summary>
    public void Find()
    {
        for (var a = 0; a < bodies.Bodies.Count; a++)
        {
            ref var body = ref bodies.Bodies[a];
            NoteOwnLines(in body);
            for (var b = a + 1; b < bodies.Bodies.Count; b++)
            {
                ref var other = ref bodies.Bodies[b];
                if (body.Bounds.Touches(in other.Bounds))
                {
                    NoteLines(in body, in other);
                }
            }
        }
    }

    // The edges of the body itself.
    private void NoteOwnLines(in Body body)
    {
        var end = body.FirstFace + body.FaceCount;
        for (var f = body.FirstFace; f < end; f++)
        {
            for (var g = f + 1; g < end; g++)
            {
                if (body.AreNeighbours(f, g))
                {
                    NoteLine(f, g, areOfOneBody: true);
                }
            }
        }
    }

    private void NoteLines(in Body body, in Body other)
    {
        FindNear(in body, in other, nearHere);
        FindNear(in other, in body, nearThere);
        foreach (var f in nearHere.Span)
        {
            foreach (var g in nearThere.Span)
            {
                NoteLine(f, g, areOfOneBody: false);
            }
        }
    }

    // The faces of a body that come near another one.
    private void FindNear(in Body body, in Body other, Store<int> near)
    {
        near.Clear();
        for (var f = body.FirstFace; f < body.FirstFace + body.FaceCount; f++)
        {
            ref var face = ref bodies.Faces[f];
            if (!face.IsSeam && face.Bounds.Touches(in other.Bounds) && crossing.MayReach(in face, in other))
            {
                near.Add(f);
            }
        }
    }

    private void NoteLine(int f, int g, bool areOfOneBody)
    {
        ref var face = ref bodies.Faces[f];
        ref var other = ref bodies.Faces[g];
        if (face.IsSeam || other.IsSeam || face.Plane == other.Plane || !face.Bounds.Touches(in other.Bounds))
        {
            return;
        }

        var common = face.Bounds.Common(in other.Bounds).Common(bodies.Room);
        if (!common.IsEmpty && (areOfOneBody || crossing.Narrow(f, g, ref common)))
        {
            lines.Note(face.Plane, other.Plane, in common);
        }
    }
}

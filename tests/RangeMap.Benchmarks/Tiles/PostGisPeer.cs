using System.Globalization;
using System.Runtime.CompilerServices;
using RangeMap.Grids;
using RangeMap.Presence;
using RangeMap.Server;

namespace RangeMap.Benchmarks;

/// <summary>
/// A throw-away PostgreSQL with PostGIS that draws the same tiles from the same cube: started in a temporary folder by a user without rights, reached by a socket in that
/// folder, and gone at the end. Set up to its advantage: outlines ready on the plane of the tiles, the cube in the order of its index, no waiting for the disk.
/// </summary>
internal sealed class PostGisPeer : IDisposable
{
    /// <summary>Whom the Debian package makes; a cluster must not be started by root.</summary>
    private const string User = "postgres";

    private readonly string _folder;
    private readonly string _programs;
    private readonly string _port;

    private PostGisPeer(string programs)
    {
        _programs = programs;
        _folder = Directory.CreateTempSubdirectory("rangemap-postgis-").FullName;
        // No port is opened: the number only names the socket in the folder, which no other program has.
        _port = "5432";
        if (Environment.UserName == "root")
            Programs.Run("chown", [User, _folder]);
        AsUser("initdb", "-D", Cluster, "-A", "trust", "-E", "UTF8", "--locale=C", "-N");
        var settings = $"-k {_folder} -p {_port} -c listen_addresses= -c shared_buffers=1GB -c work_mem=64MB -c fsync=off -c jit=off -c max_parallel_workers_per_gather=0 -c random_page_cost=1.1";
        AsUser("pg_ctl", "-D", Cluster, "-w", "-l", Path.Combine(_folder, "log"), "-o", settings, "start");
    }

    private string Cluster => Path.Combine(_folder, "cluster");

    /// <summary>Starts one; null where its programs are not installed, which is printed.</summary>
    public static PostGisPeer? Start()
    {
        const string Versions = "/usr/lib/postgresql";
        var programs = Directory.Exists(Versions) ? Directory.EnumerateDirectories(Versions).Select(version => Path.Combine(version, "bin")).LastOrDefault(bin => File.Exists(Path.Combine(bin, "initdb"))) : null;
        if (programs is not null)
            return new(programs);
        Console.WriteLine("PostGIS was not measured: it needs the Debian packages postgresql and postgresql-15-postgis-3 (or that of another version).");
        return null;
    }

    /// <summary>Loads the cube, and the addresses of the tiles that will be asked for.</summary>
    public void Load(DataSnapshot data, IReadOnlyList<TileAddress> addresses)
    {
        var whole = new Period(int.MinValue, int.MaxValue, "../..");
        var cells = data.Taxa.SelectMany(taxon => YearCube.Of(data.Cube(taxon), SquareSize.Km10, Quality.Usable, whole).Cells.Select(cell => (taxon.Number, Cell: cell))).ToList();
        var numbers = cells.Select(cell => cell.Cell.Square).Distinct().Select((square, i) => (square, i)).ToDictionary(pair => pair.square, pair => pair.i);
        var byId = data.Taxa.ToDictionary(taxon => taxon.Id, taxon => taxon.Number);
        Write("square.csv", numbers.Select(pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Value};{pair.Key};{NationalGrid.Get(pair.Key.Grid).Code};{Outline(pair.Key)}")));
        Write("cube.csv", cells.Select(cell => string.Create(CultureInfo.InvariantCulture, $"{cell.Number};{numbers[cell.Cell.Square]};{cell.Cell.Year};{cell.Cell.Records}")));
        Write("tile.csv", addresses.Select((tile, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1};{byId[tile.TaxonId]};{Box(tile)}")));
        Programs.Run(Environment.UserName == "root" ? "runuser" : Program("psql"), AsUserArguments("psql", [.. Connection, "-v", "ON_ERROR_STOP=1", "-q", "-v", $"folder={_folder}", "-f", Copy("postgis-load.sql")]));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"PostGIS holds {cells.Count:N0} rows of taxon, square and year, {numbers.Count:N0} squares and {addresses.Count:N0} tile addresses."));
    }

    /// <summary>Asks for tiles at random with two clients, each statement prepared once.</summary>
    public TileRate Ask(int addresses, int seconds)
    {
        var log = Path.Combine(_folder, "times");
        foreach (var earlier in Directory.EnumerateFiles(_folder, "times*"))
            File.Delete(earlier);
        AsUser("pgbench", [.. Connection, "-n", "-c", "2", "-j", "2", "-M", "prepared", "-D", $"tiles={addresses}", "-T", $"{seconds}", "-f", Copy("postgis-tile.sql"), "--log", $"--log-prefix={log}"]);
        // A line a statement; the third number is how long it took, microseconds (pgbench, per-transaction logging).
        var times = Directory.EnumerateFiles(_folder, "times*").SelectMany(File.ReadLines).Select(line => double.Parse(line.Split(' ')[2], CultureInfo.InvariantCulture) / 1000).Order().ToArray();
        return new((double)times.Length / seconds, times[times.Length / 2], times[(int)(times.Length * 0.99)], null);
    }

    /// <summary>A tile by the statement that is measured.</summary>
    /// <param name="tile">Its number, 1 for the first address.</param>
    public byte[] Draw(int tile)
    {
        // The first line chooses the number by chance.
        var statement = string.Join(' ', File.ReadLines(Copy("postgis-tile.sql")).Skip(1)).Replace(":i", $"{tile}", StringComparison.Ordinal).TrimEnd(';');
        return Convert.FromHexString(AsUser("psql", [.. Connection, "-Atc", $"SELECT encode(({statement}), 'hex')"]).Trim());
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        AsUser("pg_ctl", "-D", Cluster, "-m", "immediate", "stop");
        Directory.Delete(_folder, recursive: true);
    }

    private string[] Connection => ["-h", _folder, "-p", _port, "-U", Environment.UserName == "root" ? User : Environment.UserName, User];

    private string Program(string name) => Path.Combine(_programs, name);

    private string AsUser(string program, params string[] arguments) => Programs.Run(Environment.UserName == "root" ? "runuser" : Program(program), AsUserArguments(program, arguments));

    private string[] AsUserArguments(string program, string[] arguments) => Environment.UserName == "root" ? ["-u", User, "--", Program(program), .. arguments] : arguments;

    private void Write(string name, IEnumerable<string> lines) => File.WriteAllLines(Path.Combine(_folder, name), lines);

    /// <summary>A script copied to where the other user may read it.</summary>
    private string Copy(string name, [CallerFilePath] string here = "")
    {
        var path = Path.Combine(_folder, name);
        File.Copy(Path.Combine(Path.GetDirectoryName(here)!, name), path, overwrite: true);
        return path;
    }

    private static string Outline(Square square) =>
        $"SRID=27700;POLYGON(({string.Join(',', SquareOutline.On(square, TileAddress.Set.Plane).Select(corner => string.Create(CultureInfo.InvariantCulture, $"{corner.Easting:0.###} {corner.Northing:0.###}")))}))".Replace(";", "|", StringComparison.Ordinal);

    private static string Box(TileAddress tile)
    {
        var box = TileAddress.Set.TileBounds(tile.Zoom, tile.Column, tile.Row);
        return string.Create(CultureInfo.InvariantCulture, $"{box.West};{box.South};{box.East};{box.North}");
    }
}

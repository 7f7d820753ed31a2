using Parquet;
using Parquet.Schema;

namespace RangeMap.Maps;

/// <summary>Gathers the cells of one column for a block of rows.</summary>
internal abstract class ParquetColumn(DataField field)
{
    public DataField Field { get; } = field;

    public abstract void Add(in ExportValue value);

    /// <summary>Writes the block and forgets it.</summary>
    public abstract Task WriteAsync(ParquetRowGroupWriter group, CancellationToken cancel);

    public static ParquetColumn Of(ExportColumn column) => column.Kind switch
    {
        ExportKind.Whole => new Values<long>(column, value => value.Whole),
        ExportKind.Number => new Values<double>(column, value => value.Number),
        ExportKind.Day => new Values<DateOnly>(column, value => value.Day),
        ExportKind.Truth => new Values<bool>(column, value => value.Whole != 0),
        _ => new Texts(column),
    };

    private sealed class Texts(ExportColumn column) : ParquetColumn(new DataField<string>(column.Name, !column.Required))
    {
        private readonly List<string> _texts = [];

        public override void Add(in ExportValue value) => _texts.Add(value.Text!);

        public override async Task WriteAsync(ParquetRowGroupWriter group, CancellationToken cancel)
        {
            await group.WriteAsync(Field, _texts).ConfigureAwait(false);
            _texts.Clear();
        }
    }

    private sealed class Values<T>(ExportColumn column, Func<ExportValue, T> read) : ParquetColumn(new DataField<T>(column.Name, !column.Required))
        where T : struct
    {
        private readonly bool _required = column.Required;
        private readonly List<T?> _values = [];

        public override void Add(in ExportValue value) => _values.Add(value.HasValue ? read(value) : null);

        public override async Task WriteAsync(ParquetRowGroupWriter group, CancellationToken cancel)
        {
            if (_required)
                await group.WriteAsync<T>(Field, _values.Select(value => value!.Value).ToArray(), cancellationToken: cancel).ConfigureAwait(false);
            else
                await group.WriteAsync<T>(Field, (ReadOnlyMemory<T?>)_values.ToArray(), cancellationToken: cancel).ConfigureAwait(false);
            _values.Clear();
        }
    }
}

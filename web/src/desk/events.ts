// Server-sent events out of a stream. The browser's own reader of them cannot send a token.

export interface ServerEvent { name: string; data: string }

/** Cuts text into events; what is not whole yet waits for the next piece. */
export function makeEventReader(): (piece: string) => ServerEvent[] {
  let waiting = '';
  return (piece) => {
    const blocks = (waiting + piece).replaceAll('\r\n', '\n').split('\n\n');
    waiting = blocks.pop()!;
    return blocks.map(readBlock).filter((event): event is ServerEvent => event !== null);
  };
}

function readBlock(block: string): ServerEvent | null {
  let name = 'message';
  const data: string[] = [];
  for (const line of block.split('\n')) {
    const [, field, value] = /^([^:]*):? ?(.*)$/.exec(line)!;
    if (field === 'event') name = value!;
    else if (field === 'data') data.push(value!);
  }
  return data.length === 0 ? null : { name, data: data.join('\n') };
}

/** The events of a stream until it ends. */
export async function* eventsOf(stream: ReadableStream<Uint8Array>): AsyncGenerator<ServerEvent> {
  const text = stream.pipeThrough(new TextDecoderStream() as ReadableWritablePair<string, Uint8Array>).getReader();
  const read = makeEventReader();
  for (;;) {
    const { done, value } = await text.read();
    if (done) return;
    yield* read(value);
  }
}

-- Asks for the addresses of a file one after the other. Arguments: the file; "once" to stop after each was asked. Ends with a line of figures.
local ffi = require("ffi")
ffi.cdef "int getpid(void); int kill(int process, int signal);"
local interrupt = 2

local requests, next, once = {}, 0, false

function init(args)
  for address in io.lines(args[1]) do requests[#requests + 1] = wrk.format("GET", address) end
  once = args[2] == "once"
end

function request()
  next = next + 1
  if next > #requests then
    if once then
      -- The thread that asks would stop by itself; the one that keeps the time sleeps for as long as the command line says.
      wrk.thread:stop()
      ffi.C.kill(ffi.C.getpid(), interrupt)
    end
    next = 1
  end
  return requests[next]
end

function done(summary, latency)
  local errors = summary.errors
  io.write(string.format("FIGURES %d %d %d %d %d %d\n", summary.requests, summary.duration, latency:percentile(50), latency:percentile(99), summary.bytes,
    errors.connect + errors.read + errors.write + errors.status + errors.timeout))
end

"""Measures the full screen of the packaged jar through a pseudo-terminal of 80 by 24.

    python3 src/bench/console_pty.py target/handwheel.jar

Prints the time from a key to its cell on the screen, the bytes of a refresh while the gauges move,
the processor time while nobody types, and whether SIGTERM gives the terminal back as it was.
"""
import fcntl, os, pty, select, signal, struct, subprocess, sys, tempfile, termios, time

KEYS = 300
QUIET_S = 0.03


def read(master, seconds, until=None):
    """Returns chunks with their times until the time is up or a text has come."""
    chunks, end = [], time.monotonic() + seconds
    while time.monotonic() < end:
        ready, _, _ = select.select([master], [], [], max(0, end - time.monotonic()))
        if ready:
            chunks.append((time.monotonic(), os.read(master, 65536)))
            if until and until in b"".join(c for _, c in chunks):
                break
    return chunks


def bursts(chunks):
    """Joins what came without a pause: one refresh."""
    sizes, last = [], None
    for at, data in chunks:
        if last is not None and at - last < QUIET_S:
            sizes[-1] += len(data)
        else:
            sizes.append(len(data))
        last = at
    return sorted(sizes)


def share(values, part):
    return values[min(len(values) - 1, int(len(values) * part))]


def cpu_s(pid):
    fields = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def main():
    master, slave = pty.openpty()
    fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
    before = termios.tcgetattr(slave)
    command = ["java", "-jar", sys.argv[1], "drill", "steam-leak", "--seed", "1"]
    command += ["--records", tempfile.mkdtemp()]
    env = dict(os.environ, TERM="xterm-256color", LANG="C.UTF-8")
    program = subprocess.Popen(
        ["setsid", "-c"] + command, stdin=slave, stdout=slave, stderr=slave, env=env)
    read(master, 20, b"Enter: I have read")
    for page in range(4):
        time.sleep(0.4)
        os.write(master, b"\r")
    read(master, 3, b"seen here")
    delays = []
    for key in range(KEYS):
        read(master, 0.04 + 0.001 * (key * 37 % 60))
        start = time.monotonic()
        os.write(master, b"~")
        chunks = read(master, 2, b"~")
        delays.append((chunks[-1][0] - start) * 1000 if chunks else 2000)
        os.write(master, b"\x7f")
    delays.sort()
    print(f"key to screen, {KEYS} keys: median {share(delays, .5):.1f} ms, "
          f"p99 {share(delays, .99):.1f} ms, most {delays[-1]:.1f} ms")
    read(master, 5)
    cpu, start = cpu_s(program.pid), time.monotonic()
    sizes = bursts(read(master, 30))
    used = (cpu_s(program.pid) - cpu) / (time.monotonic() - start)
    print(f"a refresh, {len(sizes)} of them: median {share(sizes, .5)} bytes, "
          f"p99 {share(sizes, .99)}, most {sizes[-1]}")
    print(f"processor while nobody types: {100 * used:.1f} % of a core")
    program.send_signal(signal.SIGTERM)
    last = b"".join(c for _, c in read(master, 3, b"\x1b[?1049l"))
    code = program.wait(10)
    same = termios.tcgetattr(slave) == before
    print(f"SIGTERM: exit {code}, screen left {b'[?1049l' in last}, modes as before {same}")


main()

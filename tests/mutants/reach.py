"""Which test program reaches which lines of src/, as gcov counts them."""
import bisect
import hashlib
import json
import multiprocessing
import os
import resource
import shutil
import subprocess
import sys
import time
from collections import Counter
from pathlib import Path

from workshop import BUILD, PARTERRE, Workshop

SAVED_EVERY = 20
LIMIT_S = 600
DRAWN = ('editor', 'screen', 'main.c')
COUNTED = 'CFLAGS=-O1 --coverage'

measuring = {}                      # of a process that runs programs: what it runs, and where


def gcov(folder, suffix):
    """What gcov says of all its files with this suffix: each source with its lines."""
    files = sorted(str(path.relative_to(folder)) for path in (folder / BUILD).rglob(suffix))
    if not files:
        return
    printed = subprocess.run(['gcov', '--json-format', '--stdout', *files], cwd=folder, check=True,
                             capture_output=True, text=True).stdout
    for line in printed.splitlines():
        for source in json.loads(line)['files']:
            if source['file'].startswith('src/') and source['file'].endswith('.c'):
                yield source['file'], source['lines']


def counters_clear(folder):
    for path in (folder / BUILD).rglob('*.gcda'):
        path.unlink()


def processor_spent():
    """By what was run up to now, in seconds."""
    spent = resource.getrusage(resource.RUSAGE_CHILDREN)
    return spent.ru_utime + spent.ru_stime


def text_hash(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


def begin(shop):
    """In a process that runs programs: it counts in a folder of its own."""
    measuring['shop'] = shop
    measuring['folder'] = shop.folder / f'counted-{os.getpid()}'
    os.environ['GCOV_PREFIX'] = str(measuring['folder'])
    os.environ['GCOV_PREFIX_STRIP'] = str(len(shop.folder.parts) - 1)
    for path in (shop.folder / BUILD).rglob('*.gcno'):
        there = measuring['folder'] / path.relative_to(shop.folder)
        there.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(path, there)


def measured(program):
    """The program, and what it reaches and takes. Most can run all their tests in one process.
    What is made to fail needs one each."""
    shop, folder = measuring['shop'], measuring['folder']
    shop.link(program)
    for forks in (True,) if shop.includes(program, 'support/faults.h') else (False, True):
        counters_clear(folder)
        started = time.time()
        before = processor_spent()
        outcome = shop.run(program, LIMIT_S, LIMIT_S, forks)
        spent = processor_spent() - before
        if outcome == 'passed':
            break
    lines = {}
    for source, counted in gcov(folder, '*.gcda'):
        met = [line['line_number'] for line in counted if line['count']]
        if met:
            lines[source] = sorted(set(lines.get(source, []) + met))
    of = {'seconds': round(time.time() - started, 1), 'forks': forks, 'lines': lines,
          'processor': round(spent, 1), 'is_at_terminal': shop.is_at_terminal(program)}
    print(f"{program}: {outcome}, {of['seconds']} s, {len(lines)} sources", flush=True)
    return program, of


class Reach:
    """The map. Sources that have changed since it was made are not in it."""

    def __init__(self, root, kept, caught=()):
        """caught: for each mutant that was caught so far the program that did."""
        self.root, self.folder, self.file = root, kept / 'reach', kept / 'reach.json'
        self.map = {'hashes': {}, 'counted': {}, 'programs': {}}
        if self.file.exists():
            self.map = json.loads(self.file.read_text())
        self.by_line, self.by_folder, self.caught = {}, {}, Counter(caught)
        for program, of in self.map['programs'].items():
            for source, lines in of['lines'].items():
                for line in lines:
                    self.by_line.setdefault(source, {}).setdefault(line, set()).add(program)
        self.at_terminal = {program for program, of in self.map['programs'].items()
                            if of['is_at_terminal']}
        self.covered = self._covered()
        self.same = {source for source, hashed in self.map['hashes'].items()
                     if (root / source).exists() and text_hash(root / source) == hashed}

    def _covered(self):
        """Sources without a test of their name, and the tests that hold them."""
        rows = (line.split() for line in
                (self.root / 'tests/house/covered').read_text().splitlines()
                if not line.startswith('#'))
        return {f'src/{row[0]}': row[1:] for row in rows if row}

    # Making it

    def measure(self):
        """Runs every test program by itself, as many at a time as there are processors, those that
        take long first as far as that is known."""
        shop = Workshop(self.root, self.folder, COUNTED)
        shop.link(PARTERRE)
        counters_clear(self.folder)
        for left in self.folder.glob('counted-*'):
            shutil.rmtree(left)
        known = self.map['programs']
        self.map = {
            'hashes': {str(path.relative_to(self.root)): text_hash(path)
                       for path in self.root.glob('src/**/*.c')},
            'counted': {source: sorted(line['line_number'] for line in lines)
                        for source, lines in gcov(self.folder, '*.gcno')},
            'programs': {},
        }
        programs = sorted(shop.programs, key=lambda one: (
            -known.get(one, {'seconds': 5})['seconds'], one))
        with multiprocessing.get_context('fork').Pool(None, begin, (shop,)) as pool:
            for at, (program, of) in enumerate(pool.imap_unordered(measured, programs)):
                self.map['programs'][program] = of
                if at % SAVED_EVERY == 0:
                    self._save()
        self._save()

    def _save(self):
        fresh = self.file.with_suffix('.new')
        fresh.write_text(json.dumps(self.map))
        fresh.rename(self.file)

    # Asking it

    def sources(self):
        """Those that are as they were."""
        if not self.same:
            sys.exit('tests/mutants/run --map comes first')
        if len(self.same) < len(self.map['hashes']):
            print(f"{len(self.map['hashes']) - len(self.same)} sources have changed since --map "
                  "and are left out")
        return sorted(self.same)

    def of(self, program):
        """What is known of a program: its seconds, of them those of the processor, and
        whether it must fork for each test."""
        return self.map['programs'].get(program, {'seconds': 30, 'processor': 30, 'forks': True})

    def own(self, source):
        """The programs that are there to hold a source."""
        room, name = Path(source).parts[1], Path(source).stem
        test = f'tests/{room}/test_{name}.c'
        tests = [test] if (self.root / test).exists() else self.covered.get(source, [])
        return [f'{BUILD}/{Path(one).with_suffix("")}' for one in tests]

    def _met(self, source, line):
        """Those that reach the statement which the line is of. Of a table, and where lines have
        moved: those that reach anything in its folder, as tables are read from other sources.
        What is drawn at a terminal is not counted where the test ends by killing the program."""
        if line.is_table or source not in self.same:
            return self._near(str(Path(source).parent))
        by_line = self.by_line.get(source, {})
        counted = self.map['counted'].get(source, [])
        at = bisect.bisect_right(counted, line.number)
        if at == 0 or counted[at - 1] < line.function:
            return set()
        met = by_line.get(counted[at - 1], set())
        return met | self.at_terminal if Path(source).parts[1] in DRAWN else met

    def _near(self, folder):
        if folder not in self.by_folder:
            self.by_folder[folder] = {
                program for program, of in self.map['programs'].items()
                if any(str(Path(source).parent) == folder for source in of['lines'])}
        return self.by_folder[folder]

    def programs(self, source, line):
        """In the order in which they are run: the source's own, then those that are likely to catch
        it for the time they take, by what each has caught so far; those at a terminal last. None if
        no test reaches the line."""
        met = self._met(source, line)
        if not met:
            return []
        own, room = self.own(source), Path(source).parts[1]

        def gain(one):
            expected = 1 + self.caught[one] + 5 * (Path(one).parts[2] == room)
            return expected / (1 + self.of(one)['seconds'])
        return own + sorted(met - set(own), key=lambda one: (
            self.of(one)['is_at_terminal'], -gain(one), one))

"""A copy of the tree that is built, broken and tested, so that the tree itself is never touched."""
import json
import os
import resource
import shlex
import signal
import subprocess
import sys
import time
from pathlib import Path

BUILD = 'build'
PARTERRE = f'{BUILD}/parterre'
ARCHIVE = f'{BUILD}/core.a'
SHARED = f'{BUILD}/core.so'
MUTANT = f'{BUILD}/mutant'
CFLAGS = 'CFLAGS=-O2'
MEMORY_MOST = 8 << 30
POLL_S = 0.2


def tree_files(root):
    listed = subprocess.run(['git', '-c', 'safe.directory=*', 'ls-files', '-z', '--cached',
                             '--others', '--exclude-standard'],
                            cwd=root, check=True, capture_output=True, text=True).stdout
    return [name for name in listed.split('\0') if name and (root / name).is_file()]


def put_if_other(path, content):
    """Writes a file unless it says so already: make goes by how old files are."""
    if not path.is_file() or path.read_bytes() != content:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)


class Workshop:
    def __init__(self, root, folder, cflags=CFLAGS):
        """Copies the tree at root into the folder, or what has changed of it, and compiles all
        there, with these for make. What all programs share is a library, so that it alone is made
        anew for a mutant. Programs are linked as they are needed."""
        self.folder, self.is_sanitized = folder, 'SANITIZE' in cflags
        self.linked, self.held = {}, ''
        names = tree_files(root)
        for name in names:
            put_if_other(folder / name, (root / name).read_bytes())
            (folder / name).chmod((root / name).stat().st_mode)
        make = ['make', f'B={BUILD}', f'{cflags} -fPIC']
        self.commands = self._commands(make, names)
        parts = [target for target in self.commands if '.' in target]
        self.programs = [target for target in self.commands
                         if target.startswith(f'{BUILD}/tests/') and target not in parts]
        built = subprocess.run([*make, f'-j{os.cpu_count()}', *parts], cwd=folder, check=False,
                               stdout=subprocess.DEVNULL)
        if built.returncode != 0:
            sys.exit('the tree as it is cannot be built')

    def _commands(self, make, names):
        """How make compiles and links each target, asked of make itself."""
        question = [*make, '-nB', 'all', 'tests']
        asked = repr((question, names, os.environ.get('CC'),
                      (self.folder / 'Makefile').read_text()))
        kept = self.folder / BUILD / 'commands.json'        # make takes its time to say so
        if kept.exists() and (answer := json.loads(kept.read_text()))['asked'] == asked:
            return answer['commands']
        printed = subprocess.run(question, cwd=self.folder, check=True, capture_output=True,
                                 text=True).stdout
        commands = {}
        for line in printed.splitlines():
            command = line.split('; ')[-1]
            words = shlex.split(command) if ' -o ' in command or command.startswith('ar ') else []
            if '-o' in words:
                commands[words[words.index('-o') + 1]] = words
            elif words[:2] == ['ar', 'rcs']:
                commands[words[2]] = words
        kept.parent.mkdir(exist_ok=True)
        kept.write_text(json.dumps({'asked': asked, 'commands': commands}))
        return commands

    def _do(self, words):
        return subprocess.run(words, cwd=self.folder, stdin=subprocess.DEVNULL,
                              capture_output=True, check=False).returncode == 0

    def compile(self, source, text):
        """What becomes of a source with this text, an object that programs may be linked with;
        None if the compiler does not take it. What it warns of does not matter."""
        self.held = ''
        (self.folder / MUTANT).with_suffix('.c').write_text(text)
        words = [{source: MUTANT + '.c', self.object_of(source): MUTANT + '.o'}.get(word, word)
                 for word in self.commands[self.object_of(source)]]
        made = self._do([*words, '-w', '-g0'])
        return (self.folder / MUTANT).with_suffix('.o').read_bytes() if made else None

    @staticmethod
    def object_of(source):
        return f'{BUILD}/{source[:-2]}.o'

    def _hold(self, source):
        """Has the library hold what was compiled last in place of a source, or all as it is."""
        if self.held == source:
            return
        objects = [MUTANT + '.o' if source and word == self.object_of(source) else word
                   for word in self.commands[ARCHIVE] if word.endswith('.o')]
        words = self.commands[PARTERRE]
        compiler, libraries = words[:words.index('-o')], words[words.index(ARCHIVE) + 1:]
        assert self._do([*compiler, '-shared', '-o', SHARED + '.new', *objects, *libraries])
        (self.folder / (SHARED + '.new')).rename(self.folder / SHARED)
        self.held = source

    def link(self, program, source=None):
        """Makes a program ready; with what was compiled last in place of a source of src/, if one
        is named. Few have an object of src/ that is not in the library."""
        self._hold(source)
        words = self.commands[program]
        own = source if source and self.object_of(source) in words else None
        if program in self.linked and self.linked[program] is None and own is None:
            return
        places = {ARCHIVE: SHARED}
        if own:
            places[self.object_of(own)] = MUTANT + '.o'
        words = [places.get(word, word) for word in words]
        assert self._do([*words, f'-Wl,-rpath,{self.folder / BUILD}']), f'{program}: not linked'
        self.linked[program] = own

    def includes(self, program, header):
        return header in (self.folder / f'{program}.d').read_text()

    def is_at_terminal(self, program):
        return self.includes(program, 'support/terminal.h')

    def run(self, program, processor, wait, forks):
        """Runs a test program, up to the first test that fails: 'passed', 'failed', or 'time-out'
        where it goes on for longer than `wait`. So many seconds of the processor end it too, or
        one that it starts."""
        def begin():
            os.setpgrp()
            resource.setrlimit(resource.RLIMIT_CPU, (int(processor), int(processor) + 1))
            resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
            if not self.is_sanitized:       # those map all there is
                resource.setrlimit(resource.RLIMIT_AS, (MEMORY_MOST, MEMORY_MOST))

        scratch = self.folder / BUILD / 'scratch' / 'tmp'
        scratch.mkdir(parents=True, exist_ok=True)
        said = self.folder / f'{program}.tap'           # test by test, as they end
        said.unlink(missing_ok=True)
        environment = {**os.environ, 'TMPDIR': str(scratch), 'CK_TAP_LOG_FILE_NAME': str(said)}
        if self.is_sanitized:
            environment['CK_TIMEOUT_MULTIPLIER'] = '20'
        if not forks:
            environment['CK_FORK'] = 'no'
        with open(self.folder / f'{program}.log', 'wb') as log:
            child = subprocess.Popen([f'./{program}'], cwd=self.folder, stdin=subprocess.DEVNULL,
                                     stdout=log, stderr=log, preexec_fn=begin, env=environment)
        try:
            return self._outcome(child, said, time.monotonic() + wait)
        finally:
            self._end(child)

    @staticmethod
    def _outcome(child, said, last):
        while True:
            try:
                return 'passed' if child.wait(POLL_S) == 0 else 'failed'
            except subprocess.TimeoutExpired:
                if said.exists() and 'not ok' in said.read_text(errors='replace'):
                    return 'failed'
                if time.monotonic() > last:
                    return 'time-out'

    @staticmethod
    def _end(child):
        """Check hands a SIGTERM on to the test it has running, in a group of its own."""
        for sign in (signal.SIGTERM, signal.SIGKILL):
            if child.poll() is not None:
                return
            try:
                os.killpg(child.pid, sign)
                child.wait(3)
            except (ProcessLookupError, subprocess.TimeoutExpired):
                pass

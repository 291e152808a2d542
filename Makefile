# make            builds build/parterre
# make run        opens the sample plot in it       make check     builds and runs every test
# make install    under PREFIX (and DESTDIR)        make uninstall takes it away again
# make clean      removes the build folder
#
# For developers: make check-all, sanitize, valgrind, lint, fuzz, bench, golden.
# One test alone: make check TESTS=tests/base/test_length.c
# A variant is a build folder of its own: make B=build/clang CC=clang check

B            ?= build
PREFIX       ?= /usr/local
SAMPLE       ?= plots/court.plot
FUZZ_SECONDS ?= 60
CFLAGS       ?= -O2 -g -fstack-protector-strong -U_FORTIFY_SOURCE -D_FORTIFY_SOURCE=2
WERROR       ?=

WARN := -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wstrict-prototypes -Wmissing-prototypes \
	-Wvla -Wformat=2 -Wundef -Wcast-qual -Wwrite-strings -Wnull-dereference $(WERROR)

CORE    := $(sort $(wildcard src/*/*.c src/*/*/*.c))
SUPPORT := $(sort $(wildcard tests/support/*.c))
BENCH   := $(sort $(wildcard tests/bench/*.c))
FUZZ    := $(sort $(wildcard tests/fuzz/*.c))
TESTS   ?= $(sort $(wildcard tests/*/test_*.c tests/*/test_*.sh)) $(FUZZ)
EVERY    = src/main.c $(CORE) $(SUPPORT) $(filter %.c,$(TESTS)) $(BENCH)

objects = $(patsubst %.c,$(B)/%.o,$(1))
program = $(patsubst %.c,$(B)/%,$(1))

# Asked at each use, not when this file is read: the first call may install pkg-config itself.
LIBS      = $(shell pkg-config --libs ncursesw libcjson) -lm
LIB_FLAGS = $(shell pkg-config --cflags ncursesw libcjson)
TEST_LIBS      = $(shell pkg-config --libs check vterm) -lgeos_c -lunistring -lnova \
	-Wl,--wrap=_mark_point
TEST_LIB_FLAGS = $(shell pkg-config --cflags check vterm) \
	$(patsubst -I%,-isystem%,$(shell pkg-config --cflags-only-I $(DRAWN_MODULES)))

# Tests that read and render drawings alone are linked with what it takes.
DRAWN_MODULES := libxml-2.0 cairo
DRAWN := $(addprefix $(B)/tests/report/test_svg,_read _rendered)

TEST_FLAGS = $(TEST_LIB_FLAGS) -Itests -DBUILD_FOLDER='"$(B)"'

compiler = $(CC) -std=c17 -D_GNU_SOURCE -Isrc $(WARN) $(CPPFLAGS) $(CFLAGS) $(LIB_FLAGS)
compile = @mkdir -p $(@D); echo "  compile $<"; $(compiler) $(1) -MMD -MP -c -o $@ $<
link = @mkdir -p $(@D); echo "  link    $@"; \
	$(CC) $(CFLAGS) $(LDFLAGS) -o $@ $(filter %.o,$^) $(filter %.a,$^) $(1) $(LIBS)

.PHONY: all run check check-all tests syntax install uninstall clean golden sanitize valgrind \
	lint fuzz bench fuzzers ready
.DELETE_ON_ERROR:
.SECONDARY:
.SUFFIXES:

all: $(B)/parterre

# What rewrites the golden texts would pass them all.
ifneq ($(origin UPDATE_GOLDEN),undefined)
ifneq ($(filter check check-all sanitize valgrind,$(MAKECMDGOALS)),)
$(error UPDATE_GOLDEN is set, and nothing would be checked: only `make golden` sets it)
endif
endif

# Tests take every processor, where no -j says how many. A make within another has its jobs from it.
ifeq ($(MAKELEVEL),0)
ifneq ($(filter check check-all sanitize,$(MAKECMDGOALS)),)
MAKEFLAGS += -j$(shell nproc)
endif
endif

# Whatever is compiled waits for this. Only `run` and `check` install; the rest say what is missing.
ready:
	@CC='$(CC)' .ci/packages \
	  $(if $(filter run check check-all,$(MAKECMDGOALS)),install,name) build \
	  $(if $(filter-out all run install $(B)/parterre,$(MAKECMDGOALS)),check) \
	  $(filter lint fuzz valgrind,$(MAKECMDGOALS)) \
	  $(if $(filter check-all,$(MAKECMDGOALS)),lint fuzz)

# An archive, so that a program takes from it only what it uses.
$(B)/core.a: $(call objects,$(CORE))
	@rm -f $@
	@$(AR) rcs $@ $^

$(B)/parterre: $(B)/src/main.o $(B)/core.a
	$(call link)

$(B)/src/%.o: src/%.c Makefile | ready
	$(call compile)

$(B)/tests/%.o: tests/%.c Makefile | ready
	$(call compile,$(TEST_FLAGS))

# tests/support but for its two mains: runner.c for tests, replay.c for the seeds of fuzz targets.
MAINS := tests/support/runner.c tests/support/replay.c
$(B)/support.a: $(call objects,$(filter-out $(MAINS),$(SUPPORT)))
	@rm -f $@
	@$(AR) rcs $@ $^

TEST_PROGRAMS := $(call program,$(filter-out $(FUZZ),$(filter %.c,$(TESTS))))
FUZZERS       := $(patsubst tests/fuzz/%.c,$(B)/fuzzers/%,$(FUZZ))

$(TEST_PROGRAMS): $(B)/%: $(B)/%.o $(B)/tests/support/runner.o
$(call program,$(FUZZ)): $(B)/%: $(B)/%.o $(B)/tests/support/replay.o
$(call program,$(BENCH)): $(B)/%: $(B)/%.o
$(FUZZERS): $(B)/fuzzers/%: $(B)/tests/fuzz/%.o
$(DRAWN): TEST_LIBS += $(shell pkg-config --libs $(DRAWN_MODULES))
$(TEST_PROGRAMS) $(call program,$(FUZZ) $(BENCH)) $(FUZZERS): $(B)/support.a $(B)/core.a
	$(call link,$(TEST_LIBS))

tests: $(call program,$(filter %.c,$(TESTS))) $(B)/tests/faults/faults.so

faults_compiler = $(CC) -std=c17 -D_GNU_SOURCE $(WARN) -Wno-missing-prototypes -O2

# Put before the C library of the program that is tested, so never with sanitizers in it.
$(B)/tests/faults/faults.so: tests/faults/faults.c Makefile | ready
	@mkdir -p $(@D); echo "  compile $<"; $(faults_compiler) -shared -fPIC $< -o $@

# What the compiler says of every source, with nothing built.
syntax: ready
	@echo $(EVERY) | xargs -n 20 $(compiler) $(TEST_FLAGS) -fsyntax-only
	@$(faults_compiler) -fsyntax-only tests/faults/faults.c

# As many at a time as make was told (-j2), those that take longest first.
LONG := $(addprefix tests/,house/test_clang.sh \
	$(addprefix screen/test_,screen_large.c screen_faults.c screen_text.c screen_keys.c \
	  screen_signals.c screen_whole.c form.c) fuzz/edits.c)
check: all tests
	@B='$(B)' JOBS='$(patsubst -j%,%,$(filter -j%,$(MAKEFLAGS)))' tests/run \
	  $(call program,$(filter $(TESTS),$(LONG)) $(filter-out $(LONG),$(TESTS)))

# Up to an hour: the full counts, sanitizers, static analysis, fuzzing.
check-all: all tests
	@MAKE='$(MAKE)' B='$(B)' tests/all

golden: all tests
	@B='$(B)' UPDATE_GOLDEN=1 tests/run $(TEST_PROGRAMS)

# The copy is the user's to draw in: once there, it is never written over.
$(B)/$(notdir $(SAMPLE)): | $(SAMPLE)
	@mkdir -p $(@D)
	cp $(SAMPLE) $@

run: $(B)/parterre $(B)/$(notdir $(SAMPLE))
	@case "$$TERM" in ''|dumb) false ;; *) [ -t 0 ] && [ -t 1 ] ;; esac; \
	if [ $$? = 0 ]; then exec $(B)/parterre $(B)/$(notdir $(SAMPLE)); \
	else exec $(B)/parterre takeoff $(B)/$(notdir $(SAMPLE)); fi

MAN = $(DESTDIR)$(PREFIX)/share/man
DOC = $(DESTDIR)$(PREFIX)/share/doc/parterre

install: $(B)/parterre
	install -D -m 755 $(B)/parterre $(DESTDIR)$(PREFIX)/bin/parterre
	install -D -m 644 man/parterre.1 $(MAN)/man1/parterre.1
	install -D -m 644 man/parterre-plot.5 $(MAN)/man5/parterre-plot.5
	install -D -m 644 man/parterre-prices.5 $(MAN)/man5/parterre-prices.5
	install -D -m 644 -t $(DOC) plots/*.plot plots/*.json

uninstall:
	rm -f $(DESTDIR)$(PREFIX)/bin/parterre $(MAN)/man1/parterre.1 $(MAN)/man5/parterre-plot.5 \
	  $(MAN)/man5/parterre-prices.5
	rm -rf $(DOC)

clean:
	rm -rf $(B)

SANITIZE := -fsanitize=address,undefined -fno-sanitize-recover=all

# Slower by ten times and more, beside other work by more than that.
sanitize: export CK_TIMEOUT_MULTIPLIER ?= 20
sanitize:
	$(MAKE) B=$(B)/sanitize CFLAGS='-O1 -g -fno-omit-frame-pointer $(SANITIZE)' \
	  TESTS='$(filter %.c,$(TESTS))' check

valgrind: all tests
	@B='$(B)' UNDER=valgrind tests/run $(TEST_PROGRAMS)

# No ctuuninitvar: it takes what a function is given to fill in for something used unfilled. Tests
# are not asked for style: cppcheck does not see through Check's macros what they use.
CPPCHECK := --quiet --std=c11 --inline-suppr --suppress=missingIncludeSystem \
	--suppress=ctuuninitvar --error-exitcode=1 -Isrc -Itests

lint: ready
	cppcheck $(CPPCHECK) --enable=warning,style,performance,portability src
	cppcheck $(CPPCHECK) --enable=warning,performance,portability tests
	@echo $(EVERY) | xargs -n 1 -P 2 sh -c \
	  'echo "  look at $$0"; clang-tidy --quiet "$$0" -- -std=c17 -D_GNU_SOURCE -Isrc -Itests \
	    -DBUILD_FOLDER=\"build\" $(LIB_FLAGS) $(TEST_LIB_FLAGS) 2>/dev/null'

bench: ready $(call program,$(BENCH))
	@for bench in $(call program,$(BENCH)); do $$bench || exit 1; done

# Each target runs FUZZ_SECONDS; its finds are kept in $(B)/fuzz/corpus.
fuzz: ready
	$(MAKE) B=$(B)/fuzz CC=clang LDFLAGS=-fsanitize=fuzzer \
	  CFLAGS='-O1 -g $(SANITIZE) -fsanitize=fuzzer-no-link' fuzzers

fuzzers: $(FUZZERS)
	@for name in $(notdir $(FUZZERS)); do \
	  mkdir -p $(B)/corpus/$$name && \
	  $(B)/fuzzers/$$name -max_total_time=$(FUZZ_SECONDS) -max_len=4096 -print_final_stats=1 \
	    $$(ls tests/fuzz/$$name.dict 2>/dev/null | sed 's/^/-dict=/') \
	    -artifact_prefix=$(B)/$$name- $(B)/corpus/$$name \
	    $$(ls -d tests/fuzz/$$name plots 2>/dev/null) || exit 1; \
	done

-include $(wildcard $(B)/src/*.d $(B)/src/*/*.d $(B)/src/*/*/*.d $(B)/tests/*/*.d)

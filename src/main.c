#include "base/complain.h"
#include "base/locale.h"
#include "base/memory.h"
#include "report/command.h"
#include "screen/screen.h"

#include <errno.h>
#include <signal.h>
#include <stdbool.h>
#include <stdio.h>
#include <string.h>

#define VERSION "1.0"

static const char usage[] =
	"parterre draws a small formal garden on a grid and counts what it takes.\n"
	"\n"
	"  parterre FILE             draw: opens the plot FILE, or begins it\n"
	"  parterre takeoff FILE     print what to buy, lay and cut\n"
	"      -o, --output OUT      write it to OUT instead\n"
	"      --prices BOOK         cost it by this price book, not the plot's own\n"
	"      --force               even where OUT holds something else, or a table\n"
	"      --only PARTS          parts alone, list names them; --pages: for a printer\n"
	"      --json, --csv         for programs, in SI units; items for spreadsheets\n"
	"  parterre plan FILE        print the plan alone, drawn in characters\n"
	"  parterre setout FILE      how to mark it out\n"
	"  parterre sun FILE         hours of sun by cell and bed; --on DAY, --json\n"
	"  parterre drawing FILE     to scale as SVG; --paper a3, --scale 1:50, --plain\n"
	"  parterre snags FILE       what would not work; --json; all take -o, --force\n"
	"  parterre compare OLD NEW  print what differs; --json too\n"
	"  parterre prices new FILE  print a price book to fill in; -o and --force\n"
	"  parterre -h, --help       this page; -V, --version: which version\n"
	"\n"
	"A plot is a plain text file, by habit NAME.plot. To print, FILE may be -,\n"
	"standard input. While drawing, ? is help and ! lists all that can be done.\n"
	"\n"
	"To begin:  parterre garden.plot\n"
	"More:      man parterre, man 5 parterre-plot, man 5 parterre-prices\n";

/* Standard output may be a full disk. */
static int shown(const char *text)
{
	if (fputs(text, stdout) >= 0 && fflush(stdout) == 0)
		return 0;
	return complain("cannot write to standard output: %s", strerror(errno));
}

static bool is_one_of(const char *word, const char *a, const char *b)
{
	return strcmp(word, a) == 0 || strcmp(word, b) == 0;
}

static int misunderstood(const char *what, const char *word)
{
	complain("%s%s", what, word);
	return complain("try parterre --help");
}

static const struct {
	const char *word;
	int (*run)(int argc, char **argv);
} commands[] = {
	{ "takeoff", command_takeoff }, { "plan", command_plan },
	{ "setout", command_setout }, { "drawing", command_drawing },
	{ "sun", command_sun }, { "snags", command_snags },
	{ "compare", command_compare }, { "prices", command_prices },
};

int main(int argc, char **argv)
{
	/* A file that may grow no further is then reported like a full disk. */
	signal(SIGXFSZ, SIG_IGN);
	locale_open();
	if (argc < 2 || is_one_of(argv[1], "-h", "--help"))
		return shown(usage);
	if (is_one_of(argv[1], "-V", "--version"))
		return shown("parterre " VERSION "\n");
	for (size_t i = 0; i < sizeof commands / sizeof *commands; i++)
		if (strcmp(argv[1], commands[i].word) == 0)
			return argc > 2 && is_one_of(argv[2], "-h", "--help") ? shown(usage) :
				commands[i].run(argc - 1, argv + 1);
	if (argv[1][0] == '\0')
		return misunderstood("a plot needs a name", "");
	if (argv[1][0] == '-')
		return misunderstood("unknown option ", argv[1]);
	if (argc > 2)
		return misunderstood("one plot at a time; not understood: ", argv[2]);
	memory_keep();
	return screen_run(argv[1]);
}

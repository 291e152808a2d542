#include "report/request.h"
#include "base/complain.h"

#include <getopt.h>
#include <string.h>

/* Says what is wrong about the option that getopt_long has just met; it says nothing itself, since
 * it would print what it was given as it is. */
static bool refuse_option(int option, const char *command, const char *word)
{
	if (option == ':')
		complain("%s needs a file after it", word);
	else if (strncmp(word, "--", 2) == 0)
		complain("%s is not understood", word);
	else
		complain("option -%c is not understood", optopt);
	complain("%s takes -o OUT, --prices BOOK, --force and --json", command);
	return false;
}

static bool plots_read(struct request *request, int argc, char **argv, int plots)
{
	const char *const *files = request->plots;

	if (argc - optind != plots) {
		complain(plots == 1 ? "%s needs one plot file, or - for standard input" :
			"%s needs two plot files, of which one may be - for standard input",
			argv[0]);
		return false;
	}
	for (int i = 0; i < plots; i++)
		request->plots[i] = argv[optind + i];
	if (plots == 1 || strcmp(files[0], "-") != 0 || strcmp(files[1], "-") != 0)
		return true;
	complain("standard input holds one plot, not two");
	return false;
}

bool request_read(struct request *request, int argc, char **argv, int plots)
{
	static const struct option options[] = {
		{ "output", required_argument, NULL, 'o' },
		{ "prices", required_argument, NULL, 'p' },
		{ "json", no_argument, NULL, 'j' },
		{ "force", no_argument, NULL, 'f' },
		{ NULL, 0, NULL, 0 },
	};
	int option;

	*request = (struct request){ .output = NULL };
	opterr = 0;
	optind = 0; /* the command takes the place of the program's name */
	while ((option = getopt_long(argc, argv, ":o:", options, NULL)) != -1) {
		if (option == 'o')
			request->output = optarg;
		else if (option == 'p')
			request->prices = optarg;
		else if (option == 'j')
			request->json = true;
		else if (option == 'f')
			request->force = true;
		else
			return refuse_option(option, argv[0], argv[optind - 1]);
	}
	return plots_read(request, argc, argv, plots);
}

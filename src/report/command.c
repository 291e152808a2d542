#include "report/command.h"
#include "report/compare/compare.h"
#include "report/counted.h"
#include "report/json/json.h"
#include "report/output.h"
#include "report/text/print.h"

/* ---- Takeoff --------------------------------------------------------------------------------- */

/* A takeoff to be printed, as file_content takes it. */
struct asked {
	const struct request *request;
	const struct counted *counted;
};

static void print_takeoff(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	if (asked->request->json)
		report_json(out, &counted->plot, &counted->takeoff);
	else
		report_text(out, &counted->plot, &counted->takeoff,
			counted_name(asked->request->plots[0]));
}

int command_takeoff(int argc, char **argv)
{
	struct request request;
	struct counted counted;
	int status = 2;

	if (!request_read(&request, argc, argv, 1))
		return status;
	if (counted_read(&counted, request.plots[0], request.prices))
		status = output_print(&request,
			&(struct file_content){ print_takeoff,
				&(struct asked){ &request, &counted } },
			&(struct delivery_from){ request.plots[0], counted.book_path, NULL });
	counted_fini(&counted);
	return status;
}

/* ---- Compare --------------------------------------------------------------------------------- */

struct asked_comparison {
	const struct request *request;
	struct comparison *comparison;
};

static void print_comparison(struct sink *out, const void *context)
{
	const struct asked_comparison *asked = context;

	if (asked->request->json)
		compare_json(out, asked->comparison);
	else
		compare_text(out, asked->comparison);
}

static int compare(const struct request *request, const struct counted versions[static VERSIONS])
{
	struct arena arena = ARENA_EMPTY, words = ARENA_EMPTY;
	struct comparison comparison;
	struct compared compared[VERSIONS];
	const struct delivery_from old = { request->plots[OLD], versions[OLD].book_path, NULL };
	const struct delivery_from from = { request->plots[NEW], versions[NEW].book_path, &old };
	int status;

	for (int i = 0; i < VERSIONS; i++)
		compared[i] = (struct compared){ &versions[i].plot, &versions[i].takeoff,
			counted_name(request->plots[i]) };
	comparison_make(&comparison, &arena, &words, compared);
	status = output_print(request, &(struct file_content){ print_comparison,
		&(struct asked_comparison){ request, &comparison } }, &from);
	if (status == 0 && !compare_is_same(&comparison))
		status = 1;
	arena_clear(&words);
	arena_clear(&arena);
	return status;
}

int command_compare(int argc, char **argv)
{
	struct request request;
	struct counted versions[VERSIONS];
	int status = 2;

	if (!request_read(&request, argc, argv, VERSIONS))
		return status;
	if (counted_read(&versions[OLD], request.plots[OLD], request.prices)) {
		if (counted_read(&versions[NEW], request.plots[NEW], request.prices))
			status = compare(&request, versions);
		counted_fini(&versions[NEW]);
	}
	counted_fini(&versions[OLD]);
	return status;
}

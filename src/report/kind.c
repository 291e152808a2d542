#include "report/kind.h"
#include "base/path.h"
#include "report/csv/csv.h"
#include "report/json/json.h"
#include "report/text/print.h"

enum report_kind report_kind_of(const char *path)
{
	if (path[path_stem(path, ".json")])
		return REPORT_JSON;
	return path[path_stem(path, ".csv")] ? REPORT_CSV : REPORT_TEXT;
}

void report_print(enum report_kind kind, unsigned parts, struct sink *out, const struct plot *plot,
	const struct takeoff *takeoff, const char *name)
{
	switch (kind) {
	case REPORT_TEXT:
		report_text(out, plot, takeoff, name, parts);
		break;
	case REPORT_JSON:
		report_json(out, plot, takeoff);
		break;
	case REPORT_CSV:
		report_csv(out, plot, takeoff);
		break;
	}
}

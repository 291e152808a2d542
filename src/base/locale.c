#include "base/locale.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>

void locale_open(void)
{
	static const char *const names[] = { "LC_ALL", "LC_CTYPE", "LANG" };
	const char *wanted = NULL;

	if (setlocale(LC_CTYPE, ""))
		return;
	for (size_t i = 0; i < sizeof names / sizeof *names && (!wanted || !*wanted); i++)
		wanted = getenv(names[i]);
	if (wanted && (strcasestr(wanted, "utf-8") || strcasestr(wanted, "utf8")))
		setlocale(LC_CTYPE, "C.UTF-8");
}

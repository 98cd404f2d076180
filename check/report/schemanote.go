package report

// narrower is what the Go type of a key does not say: the words it may hold, its form, its meaning.
var narrower = map[string]map[string]any{
	"Verdict.schema":         {"const": Schema},
	"Verdict.verdict":        {"enum": verdictWords},
	"Verdict.as_of":          {"pattern": `^[0-9]{4}-[0-9]{2}-[0-9]{2}$`, "description": "day the line is judged for"},
	"Verdict.sheet":          {"description": "path of the line sheet as given"},
	"Verdict.reason":         {"description": "one sentence: why this word"},
	"Verdict.confirm":        {"description": "favourable values to look up before the line is relied on"},
	"Verdict.unjudged":       {"description": "missing facts and the rules that wait for them"},
	"Governing.have_kpa":     {"description": "what the part holds, gauge kilopascal, rounded down"},
	"Governing.need_kpa":     {"description": "what the case brings, gauge kilopascal, rounded up"},
	"Governing.margin":       {"description": "have less need, signed"},
	"RegionCase.held":        {"enum": []string{"yes", "no", "not-known"}},
	"Finding.severity":       {"enum": severities},
	"Finding.numbers":        {"description": "the integers of the rule; the unit is in the name"},
	"Judged.severity":        {"enum": severities},
	"Judged.findings":        {"minimum": 0},
	"Basis.standing":         {"enum": standingWords()},
	"Confirm.standing":       {"enum": standingWords()},
	"Position.line":          {"minimum": 1},
	"Position.column":        {"minimum": 1},
	"Case.pressure_kpa":      {"description": "gauge kilopascal"},
	"Unjudged.ask":           {"description": "what to find out and where to write it"},
	"Digests.sheet":          {"pattern": sum},
	"Digests.facts":          {"pattern": sum},
	"Digests.rules":          {"pattern": sum},
	"Digests.site":           {"pattern": sum},
	"Digests.catalog":        {"description": "SHA-256 of every catalog row used, by kind and id"},
	"Judged.not_applicable":  {"description": "subjects outside the scope of the rule"},
	"Judged.could_not_judge": {"description": "subjects for which a fact is missing"},
}

// sum is a SHA-256 in hex.
const sum = `^[0-9a-f]{64}$`

func standingWords() []string {
	var words []string
	for _, s := range standings {
		words = append(words, s.word)
	}
	return words
}

# METADATA
# title: A chemical cargo hose lacks a mark that ship law asks for
# description: |
#   The US rule for chemical cargo ships wants date of manufacture, working pressure, date of the last
#   test, and both temperature limits on the hose.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 153.940"]
#   needs: [hoses.marked_pressure, hoses.marked_year, hoses.marked_test_date, hoses.marked_temperatures]
#   message: "{part} does not show: {missing}"
#   action: "Do not use the hose until its maker or assembler has marked it."
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "marks"
#       standing: published
package rules.marking.chemical_cargo_marks_incomplete

report contains {"subject": h.id, "part": h.id, "missing": concat(", ", missing)} if {
	"46 CFR 153.940" in input.line.regimes
	some h in input.hoses
	missing := {mark | some mark in _wanted; _lacks(h, mark)}
	count(missing) > 0
}

_wanted := {"working pressure", "year made", "date of the last test", "highest and lowest temperature"}

_lacks(h, "working pressure") if h.marked_pressure == false

_lacks(h, "year made") if h.marked_year == false

_lacks(h, "date of the last test") if h.marked_test_date == false

_lacks(h, "highest and lowest temperature") if h.marked_temperatures == false

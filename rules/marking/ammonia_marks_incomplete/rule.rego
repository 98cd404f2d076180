# METADATA
# title: An ammonia hose lacks a mark that the law asks for
# description: |
#   Beside the words for ammonia, the US rule wants working pressure, maker and year on the hose, at
#   least every 1.5 m or on a fixed plate. It speaks of hoses from half an inch outside diameter.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "regime=29 CFR 1910.111"]
#   needs: [hoses.marked_ammonia, hoses.marked_pressure, hoses.marked_maker, hoses.marked_year]
#   message: "{part} is marked for ammonia but does not show: {missing}"
#   action: >-
#     Do not use the hose until its maker or assembler has fixed a plate with the missing marks, or fit a
#     fully marked one.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(v)"
#       standing: published
package rules.marking.ammonia_marks_incomplete

report contains {"subject": h.id, "part": h.id, "missing": concat(", ", missing)} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	h.marked_ammonia == true
	missing := _missing(h)
	count(missing) > 0
}

_missing(h) := {mark |
	some mark in {"maker", "working pressure", "year made"}
	_lacks(h, mark)
}

_lacks(h, "maker") if h.marked_maker == false

_lacks(h, "working pressure") if h.marked_pressure == false

_lacks(h, "year made") if h.marked_year == false

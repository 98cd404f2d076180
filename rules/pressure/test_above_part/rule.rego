# METADATA
# title: A part in a pressure test is asked for more than a test may ask
# description: |
#   A test may go above what a part is rated for in use, but only so far: half as much again with a liquid,
#   a third with a gas, and not at all for what has no reserve for it. A gauge, a regulator, a pump and
#   a seal count as rated, a hose with gas too.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: test_items
#   scope: ["!what=relief"]
#   needs: [test_items.rated_kpa, test_items.test_ratio_permille]
#   absent: [test_items.proof_ratio_permille]
#   message: >-
#     {part} ({what}) is rated {rated_kpa}; the test of {run} with {medium} is {need_ratio_permille} times
#     that, {have_ratio_permille} is allowed
#   action: >-
#     Blank the part off or take it out for the test and say so under isolated, or test lower.
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.4.2 and 345.5.4"
#       standing: recalled
#     - document: RMA IP-2
#       edition: "2003"
#       clause: "chapter 9"
#       standing: published
#     - document: ASME B16.5
#       edition: ""
#       clause: "system hydrostatic test"
#       standing: restated
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.test_above_part

report contains {
	"subject": i.id,
	"part": i.part,
	"what": i.what,
	"run": i.run,
	"case": "pressure-test",
	"medium": _medium[i.gas],
	"rated_kpa": i.rated_kpa,
	"have_ratio_permille": _may(i),
	"need_ratio_permille": i.test_ratio_permille,
} if {
	some i in input.test_items
	_may(i) < i.test_ratio_permille
}

_medium := {true: "gas", false: "liquid"}

# The class of a hose may be proof tested at less than a line test would allow.
_may(i) := min({_allowed(i), i.proof_ratio_permille})

_may(i) := _allowed(i) if not i.proof_ratio_permille

_allowed(i) := _with_gas[i.what] if i.gas

_allowed(i) := _with_liquid[i.what] if not i.gas

_with_gas := {
	"body": 1330,
	"end": 1330,
	"hose": 1000,
	"gauge": 1000,
	"pump": 1000,
	"regulator": 1000,
	"seal": 1000,
	"vessel": 1000,
}

_with_liquid := {
	"body": 1500,
	"end": 1500,
	"hose": 1500,
	"gauge": 1000,
	"pump": 1000,
	"regulator": 1000,
	"seal": 1000,
	"vessel": 1000,
}

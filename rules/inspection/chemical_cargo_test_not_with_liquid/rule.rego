# METADATA
# title: A chemical cargo hose was not tested with standing liquid
# description: |
#   The US rule for chemical cargo at sea counts only the pressure of a test with standing liquid.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 153.940"]
#   needs: [hoses.test_kind]
#   message: "The last test of {part} was {kind}; the law counts a test with standing liquid"
#   action: "Test the hose with water or another liquid that suits it, and mark date and pressure."
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "test pressure"
#       standing: published
package rules.inspection.chemical_cargo_test_not_with_liquid

report contains {"subject": h.id, "part": h.id, "kind": h.test_kind} if {
	"46 CFR 153.940" in input.line.regimes
	some h in input.hoses
	h.test_kind in {"pneumatic", "leak", "visual"}
}

# METADATA
# title: The working pressure is not marked on a hose
# description: |
#   Without the figure on the hose nobody can check at the line that the right one is coupled. Where a
#   law asks for the mark, its own rule speaks.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [marks_stated]
#   needs: [hoses.marked_pressure]
#   message: "{part} does not show its working pressure"
#   action: "Fix a tag or plate with the working pressure from the certificate, or fit a marked hose."
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(e)-(f)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.marking.working_pressure_not_marked

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.marks_stated
	h.marked_pressure == false
	not _law_speaks(h)
}

_law_speaks(h) if {
	h.carries_ammonia
	"29 CFR 1910.111" in input.line.regimes
}

_law_speaks(h) if {
	h.carries_liquefied_gas
	some law in {"33 CFR 127.1102", "49 CFR 180.416"}
	law in input.line.regimes
}

_law_speaks(_) if {
	some law in {"33 CFR 154.500", "46 CFR 153.940", "46 CFR 38.15-5"}
	law in input.line.regimes
}

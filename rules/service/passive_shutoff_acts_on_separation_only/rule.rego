# METADATA
# title: A shut-off in the line acts only when the hose parts
# description: |
#   It closes within 20 seconds when the hose is pulled off completely. A hose that splits and stays
#   connected does not trip it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: parts
#   scope: [acts_on_separation_only]
#   needs: []
#   message: "{part} closes only on complete separation; a split hose goes on leaking"
#   action: >-
#     Do not count on this device for a leak or a split. Know who closes what by hand or by remote, and
#     from where.
#   basis:
#     - document: 49 CFR 173.315
#       edition: "CFR 2015 annual edition"
#       clause: "(n)(2)"
#       standing: published
#     - document: NTSB HAZ-12-01-SUM
#       edition: ""
#       clause: "letters H-12-2 to H-12-6"
#       standing: published
package rules.service.passive_shutoff_acts_on_separation_only

report contains {"subject": p.id, "part": p.id} if {
	some p in input.parts
	p.acts_on_separation_only
}

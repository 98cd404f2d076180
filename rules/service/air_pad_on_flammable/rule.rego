# METADATA
# title: Air, or a gas with oxygen, would push a flammable liquid
# description: |
#   Pressing air over a flammable liquid makes an explosive mixture in a closed vessel.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: meetings
#   scope: ["where=pad"]
#   needs: []
#   message: "Air, or a gas that holds oxygen, lies over a flammable liquid ({a} with {b})"
#   action: "Use nitrogen or another inert gas from a supply that cannot be mixed up with air, or a pump."
#   basis:
#     - document: 29 CFR 1910.106
#       edition: ""
#       clause: "(e)(2)(iv)(d)"
#       standing: recalled
#     - document: 29 CFR 1926.152
#       edition: ""
#       clause: "(e)(3)"
#       standing: recalled
package rules.service.air_pad_on_flammable

report contains {"subject": m.id, "a": m.a, "b": m.b} if {
	some m in input.meetings
	m.where == "pad"
	m.air_pad
}
